// Plans of the same drawn jobs by the core's own search and by a general solver, each in a new worker of this page.

let text;

/** Begins a run; `bench.seen` holds what came of it once it is over. */
globalThis.bench = {
  seen: null,
  start(which, cells, seed, seconds, presolve) {
    this.seen = null;
    const worker = new Worker(new URL(`./plan-${which}.js`, import.meta.url), { type: 'module' });
    const ended = (seen) => {
      worker.terminate();
      if (seen.program) text = seen.program;
      this.seen = { ...seen, program: undefined };
    };
    worker.onmessage = ({ data }) => ended(data);
    worker.onerror = ({ message }) => ended({ error: message || 'the worker did not start' });
    worker.postMessage({ cells, seed, seconds, presolve, program: which === 'highs' ? text : undefined });
  },
};
