// The core's search, step by step. Each line of what is seen: milliseconds, cost of the best plan, bound.
import init, { Planner, program } from './planner/planner.js';

async function searched({ cells, seed, seconds }) {
  const { memory } = await init({ module_or_path: new URL('./planner/planner_bg.wasm', import.meta.url) });
  const seen = [];
  const from = performance.now();
  const planner = new Planner(cells, seed);
  const note = () => {
    const [cost, bound] = [planner.cost() ?? null, planner.bound() ?? null];
    const last = seen.at(-1);
    if (!last || last[1] !== cost || last[2] !== bound) seen.push([performance.now() - from, cost, bound]);
  };
  note();
  while (performance.now() - from < seconds * 1000) {
    const more = planner.step();
    note();
    if (!more) break;
  }
  const spent = performance.now() - from;
  const memoryBytes = memory.buffer.byteLength;
  // The same model as text for the other one; made after what is measured.
  return { seen, spent, proof: planner.proof(), nodes: planner.nodes(), memory: memoryBytes, program: program(cells, seed) };
}

self.onmessage = ({ data }) => searched(data).then(self.postMessage.bind(self), (error) => self.postMessage({ error: String(error) }));
