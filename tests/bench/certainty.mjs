// Certainty of one part and the ranking of 300, by the reckoning worker's wasm and by plain JavaScript. Prints JSON.
import { readFileSync } from 'node:fs';

const [pkg, zip] = process.argv.slice(2);
const { Copy, initSync, JobFileIn, weigh } = await import(`${pkg}/reckon.js`);
initSync({ module: readFileSync(`${pkg}/reckon_bg.wasm`) });

const bytes = readFileSync(zip);
const file = JobFileIn.open(bytes.length, (from, length) => new Uint8Array(bytes.subarray(from, from + length)));
const copy = new Copy();
for (const { index, kind, hash } of file.contents().members) if (kind === 'chunk') copy.chunk(hash, file.read(index));
copy.fold();

function timed(times, work) {
  const taken = [];
  for (let time = 0; time < times; time++) {
    const began = performance.now();
    work();
    taken.push(performance.now() - began);
  }
  return taken;
}

// Plain JavaScript doing the same: guesses by the usual ratio of two gamma draws, costs with fallbacks in the cheapest order.
function normal() {
  return Math.sqrt(-2 * Math.log(1 - Math.random())) * Math.cos(2 * Math.PI * Math.random());
}

function gamma(shape) {
  const d = shape - 1 / 3;
  for (;;) {
    const x = normal();
    const v = (1 + x / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - Math.random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

function pert([least, likely, most]) {
  const a = gamma(1 + (4 * (likely - least)) / (most - least));
  const b = gamma(1 + (4 * (most - likely)) / (most - least));
  return least + ((most - least) * a) / (a + b);
}

const hour = 20_00;
const about = (value) => [value * 0.722, value, value * 1.533];
const wild = (value) => [value * 0.085, value, value * 3.189];
const quotes = [
  { cash: about(1800), time: wild(120), chance: about(0.2), strip: 90 },
  { cash: about(7500), time: about(45), chance: about(0.05), strip: 60 },
  { cash: about(10600), time: [15, 15, 15], chance: [0, 0, 0], strip: 0 },
];
const drawn = (range) => (range[0] === range[2] ? range[1] : pert(range));

function simulated(draws) {
  const presents = quotes.map(() => []);
  const wins = [0, 0, 0];
  const regrets = [0, 0, 0];
  for (let draw = 0; draw < draws; draw++) {
    const now = quotes.map(({ cash, time, chance, strip }, at) => {
      const direct = drawn(cash) + (drawn(time) / 60) * hour;
      const fails = drawn(chance);
      const again = (strip / 60) * hour;
      return { at, direct, fails, again, ratio: (direct + fails * again) / (1 - fails) };
    });
    const order = [...now].sort((one, other) => one.ratio - other.ratio);
    const worth = now.map((quote) => {
      const after = order.filter((other) => other !== quote);
      const then = after.reduceRight((rest, next) => next.direct + next.fails * (next.again + rest), 0);
      return quote.direct + quote.fails * (quote.again + then);
    });
    const least = Math.min(...worth);
    wins[worth.indexOf(least)]++;
    worth.forEach((value, at) => {
      presents[at].push(value);
      regrets[at] += value - least;
    });
  }
  return presents.map((values, at) => {
    const sorted = Float64Array.from(values).sort();
    return { cheapest: wins[at] / draws, regret: regrets[at] / draws, p10: sorted[Math.floor(draws * 0.1)], p90: sorted[Math.floor(draws * 0.9)] };
  });
}

const rows = weigh(copy, { ask: 'undecided', draws: 10 }).parts;
const part = rows[0].part;
const ours = weigh(copy, { ask: 'certainty', part });
const js = simulated(100_000);
console.log(
  JSON.stringify({
    parts: rows.length,
    chances: { ours: ours.quotes.map(({ cheapest }) => cheapest), js: js.map(({ cheapest }) => cheapest) },
    one: timed(15, () => weigh(copy, { ask: 'certainty', part })),
    ranking: timed(5, () => weigh(copy, { ask: 'undecided' })),
    js_one: timed(15, () => simulated(10_000)),
    js_ranking: timed(5, () => { for (let at = 0; at < 300; at++) simulated(1_000); }),
  }),
);
