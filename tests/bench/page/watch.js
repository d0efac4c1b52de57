// Put into the app's page before its first line: notes when things happen.
(() => {
  const seen = (window.__seen = { ups: [], ticks: [], commands: [], derived: [], long: [], rows: null, safe: 0, blinks: [] });
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message, ...rest) {
    if (message && message.name === 'command') noteCommand(this, message);
    if (!this.__heard) {
      this.__heard = true;
      this.addEventListener('message', ({ data }) => data?.news === 'derived' && seen.derived.push(performance.now()));
    }
    return post.call(this, message, ...rest);
  };
  function noteCommand(worker, { call, args }) {
    const command = { sent: performance.now(), bytes: args[1]?.[0]?.bytes?.byteLength ?? 0 };
    seen.commands.push(command);
    const heard = ({ data }) => {
      if (data?.call !== call) return;
      command.answered = performance.now();
      worker.removeEventListener('message', heard);
    };
    worker.addEventListener('message', heard);
  }
  new PerformanceObserver((list) => seen.long.push(...list.getEntries().map(({ startTime, duration }) => [startTime, duration]))).observe({ type: 'longtask', buffered: true });
  addEventListener('pointerup', () => seen.ups.push(performance.now()), true);
  window.__shown = () =>
    new Promise((resolve) => {
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => resolve(performance.now());
        channel.port2.postMessage(0);
      });
    });
  let wasDark = false;
  const look = () => {
    const safe = Number(document.querySelector('[data-safe]')?.getAttribute('data-safe') ?? 0);
    if (safe > seen.safe) {
      seen.safe = safe;
      void window.__shown().then((at) => seen.ticks.push(at));
    }
    // The sight darkens, the picture is taken: what a person sees first.
    const dark = document.querySelector('.sight-flash') !== null;
    if (dark && !wasDark) void window.__shown().then((at) => seen.blinks.push(at));
    wasDark = dark;
    if (!seen.rows && document.querySelector('.parts-item .row')) {
      seen.rows = { drawn: performance.now() };
      void window.__shown().then((at) => (seen.rows.shown = at));
    }
  };
  new MutationObserver(look).observe(document, { subtree: true, childList: true, attributes: true });
})();
