"""The best plans of drawn models by a general solver: HiGHS, as scipy.optimize.milp has it, presolve off.

cargo run -p asfound-tests --example plan-models -- 30 1 20 | python plan_by_highs.py
prints: cells, seed, cost in minor units, or "nothing fits".
"""

import json
import sys

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_matrix


class Program:
    def __init__(self):
        self.cost, self.low, self.high, self.whole, self.rows = [], [], [], [], []

    def variable(self, cost, low=0.0, high=1.0, whole=True):
        self.cost.append(cost), self.low.append(low), self.high.append(high), self.whole.append(int(whole))
        return len(self.cost) - 1

    def row(self, terms, low, high):
        self.rows.append((terms, low, high))

    def solve(self):
        at = [(row, var, factor) for row, (terms, _, _) in enumerate(self.rows) for var, factor in terms]
        matrix = csr_matrix(([f for _, _, f in at], ([r for r, _, _ in at], [v for _, v, _ in at])), shape=(len(self.rows), len(self.cost)))
        limits = LinearConstraint(matrix, [low for _, low, _ in self.rows], [high for _, _, high in self.rows])
        options = {"presolve": False, "mip_rel_gap": 0.0, "time_limit": 120}
        return milp(self.cost, constraints=limits, bounds=Bounds(self.low, self.high), integrality=self.whole, options=options)


def stretches(points, most):
    points = sorted({point for point in points if 0 <= point <= most})
    return list(zip(points, [after - 1 for after in points[1:]] + [most]))


def carriage(order, value, mass):
    if order["free_from"] is not None and value >= order["free_from"]:
        return 0
    held = [tier for tier in order["tiers"] if value >= tier[0] and mass >= tier[1]]
    return held[-1][2] if held else order["carriage"]


def best(model):
    program = Program()
    inf = np.inf
    taken = [[program.variable(take["cost"]) for take in takes] for takes in model["cells"]]
    used = [program.variable(shared["cost"]) for shared in model["shared"]]
    for variables in taken:
        program.row([(var, 1) for var in variables], 1, 1)
    for at, var in enumerate(used):
        by = [[v for v, take in zip(vs, takes) if at in take["uses"]] for vs, takes in zip(taken, model["cells"])]
        for users in filter(None, by):
            program.row([(user, 1) for user in users] + [(var, -1)], -inf, 0)
        program.row([(var, 1)] + [(user, -1) for users in by for user in users], -inf, 0)
    charges = []
    loaded = [(var, take["loads"]) for vs, takes in zip(taken, model["cells"]) for var, take in zip(vs, takes)]
    loaded += [(var, shared["loads"]) for var, shared in zip(used, model["shared"])]
    for at, order in enumerate(model["orders"]):
        goods = [(var, value, mass) for var, loads in loaded for number, value, mass in loads if number == at]
        most_value, most_mass = sum(v for _, v, _ in goods), sum(m for _, _, m in goods)
        values = stretches([0, order["minimum_order"], order["minimum_charge"], order["free_from"] or 0] + [t[0] for t in order["tiers"]], most_value)
        masses = stretches([0] + [t[1] for t in order["tiers"]], most_mass)
        bands = []
        for low_mass, high_mass in masses:
            for low, high in [band for band in values if band[0] >= order["minimum_order"]]:
                paid, short = carriage(order, low, low_mass), low < order["minimum_charge"]
                is_in = program.variable(paid + (order["minimum_charge"] if short else 0))
                value = program.variable(-1 if short else 0, 0, high, False)
                mass = program.variable(0, 0, high_mass, False)
                program.row([(value, 1), (is_in, -low)], 0, inf), program.row([(value, 1), (is_in, -high)], -inf, 0)
                program.row([(mass, 1), (is_in, -low_mass)], 0, inf), program.row([(mass, 1), (is_in, -high_mass)], -inf, 0)
                bands.append((is_in, value, mass))
                charges += [(is_in, program.cost[is_in])] + ([(value, -1)] if short else [])
        program.row([(is_in, 1) for is_in, _, _ in bands], -inf, 1) if bands else None
        for var, _, _ in goods:
            program.row([(var, 1)] + [(is_in, -1) for is_in, _, _ in bands], -inf, 0)
        if goods:
            program.row([(v, 1) for _, v, _ in bands] + [(var, -value) for var, value, _ in goods], 0, 0)
            program.row([(m, 1) for _, _, m in bands] + [(var, -mass) for var, _, mass in goods], 0, 0)
    for name in ("cash", "minutes"):
        if model[name] is not None:
            terms = [(var, take[name]) for vs, takes in zip(taken, model["cells"]) for var, take in zip(vs, takes)]
            terms += [(var, shared[name]) for var, shared in zip(used, model["shared"])]
            program.row(terms + (charges if name == "cash" else []), -inf, model[name])

    def chosen(one):
        if "cell" in one:
            return [(var, 1) for var, counts in zip(taken[one["cell"]], one["which"]) if counts]
        return [(used[one["shared"]], 1)] if "shared" in one else []

    for rule in model["rules"]:
        subject, other = chosen(rule["subject"]), chosen(rule["other"])
        away = [(var, -factor) for var, factor in other]
        if rule["relation"] == "rules-out":
            program.row(subject + other, -inf, 1)
        elif rule["relation"] == "needs":
            program.row(subject + away, -inf, 0)
        else:
            program.row(subject + away + [(program.variable(rule["price"]), -1)], -inf, 0)
    return program.solve()


for line in sys.stdin:
    drawn = json.loads(line)
    found = best(drawn["model"])
    said = round(found.fun) if found.status == 0 else "nothing fits" if found.status == 2 else f"not proved: {found.message}"
    print(drawn["cells"], drawn["seed"], said, flush=True)
