"""The simulation of one part, and the ranking of 300, in numpy. Prints JSON."""

import json
import time

import numpy as np

RNG = np.random.default_rng(1)
HOUR = 20_00.0


def about(value):
    return value * 0.722, value, value * 1.533


def wild(value):
    return value * 0.085, value, value * 3.189


QUOTES = [
    (about(1800.0), wild(120.0), about(0.2), 90.0),
    (about(7500.0), about(45.0), about(0.05), 60.0),
    (about(10600.0), (15.0,) * 3, (0.0,) * 3, 0.0),
]


def drawn(guess, draws):
    least, likely, most = guess
    if least == most:
        return np.full(draws, likely)
    place = (likely - least) / (most - least)
    return least + (most - least) * RNG.beta(1 + 4 * place, 5 - 4 * place, draws)


def simulated(draws):
    direct, fails, again = [], [], []
    for cash, minutes, chance, strip in QUOTES:
        direct.append(drawn(cash, draws) + drawn(minutes, draws) / 60 * HOUR)
        fails.append(drawn(chance, draws))
        again.append(strip / 60 * HOUR)
    ratio = [(d + f * a) / (1 - f) for d, f, a in zip(direct, fails, again)]
    worth = np.empty((3, draws))
    for at in range(3):
        one, other = [i for i in range(3) if i != at]
        tried = [direct[i] + fails[i] * again[i] for i in (one, other)]
        first = ratio[one] <= ratio[other]
        then = np.where(first, tried[0] + fails[one] * tried[1], tried[1] + fails[other] * tried[0])
        worth[at] = direct[at] + fails[at] * (again[at] + then)
    least = worth.min(axis=0)
    wins = np.bincount(worth.argmin(axis=0), minlength=3) / draws
    return wins, np.quantile(worth, [0.1, 0.5, 0.9], axis=1), (worth - least).mean(axis=1)


def timed(times, work):
    taken = []
    for _ in range(times):
        began = time.perf_counter()
        work()
        taken.append((time.perf_counter() - began) * 1000)
    return taken


def ranking():
    for _ in range(300):
        simulated(1_000)


print(json.dumps({
    "numpy": np.__version__,
    "chances": simulated(100_000)[0].tolist(),
    "one": timed(15, lambda: simulated(10_000)),
    "ranking": timed(5, ranking),
}))
