// HiGHS compiled to wasm. Its time begins once it has read the text: reading counts for nothing.
import loadHighs from './peers/highs.js';

async function searched({ seconds, presolve, program }) {
  const highs = await loadHighs({ locateFile: (file) => new URL(`./peers/${file}`, import.meta.url).href });
  const model = highs.createModel({ format: 'lp', data: program });
  // Costs are whole: what is less than one unit better is no better plan.
  model.options.set({ output_flag: false, presolve, mip_rel_gap: 0, mip_abs_gap: 0.99, time_limit: seconds });
  const seen = [];
  const from = performance.now();
  const finite = (value) => (Number.isFinite(value) && Math.abs(value) < 1e20 ? value : null);
  const note = (cost, bound) => {
    const last = seen.at(-1);
    if (!last || last[1] !== cost || last[2] !== bound) seen.push([performance.now() - from, cost, bound]);
  };
  const look = ({ data }) => note(finite(data.mip_primal_bound), finite(data.mip_dual_bound));
  const { mipInterrupt, mipImprovingSolution, mipLogging } = highs.constants.callbackType;
  const { modelStatus } = model.run({ [mipInterrupt]: look, [mipImprovingSolution]: look, [mipLogging]: look });
  const spent = performance.now() - from;
  const status = Object.entries(highs.constants.modelStatus).find(([, code]) => code === modelStatus)?.[0] ?? String(modelStatus);
  const proof = { optimal: 'best', infeasible: 'nothing fits', unboundedOrInfeasible: 'nothing fits' }[status] ?? status;
  if (status === 'optimal') note(model.getObjectiveValue(), finite(model.info.get('mip_dual_bound')));
  return { seen, spent, proof, nodes: Number(model.info.get('mip_node_count')), memory: highs.memoryBytes };
}

self.onmessage = ({ data }) => searched(data).then(self.postMessage.bind(self), (error) => self.postMessage({ error: String(error) }));
