// The smaller pictures of a 12 MP photo: the app's own module in a worker,
// beside one decode, one drawing and one encoding in a worker of the same kind.

import { another, twelveMegapixels } from './pictures.js';

/** Milliseconds each of `times` rounds, with the main thread's long tasks in the meantime. */
export async function derives(which, times) {
  const photo = await twelveMegapixels();
  const worker = new Worker(new URL('./derive-worker.js', import.meta.url), { type: 'module' });
  const long = [];
  const observer = new PerformanceObserver((list) => long.push(...list.getEntries().map(({ duration }) => duration)));
  const spent = [];
  for (let i = 0; i < times + 1; i++) {
    const bytes = another(photo, i);
    // The first one warms up, and is not counted.
    if (i === 1) observer.observe({ entryTypes: ['longtask'] });
    const answer = await new Promise((resolve, reject) => {
      worker.onmessage = ({ data }) => resolve(data);
      worker.onerror = reject;
      worker.postMessage({ which, bytes }, [bytes]);
    });
    if (i > 0) spent.push(answer.spent);
  }
  observer.disconnect();
  worker.terminate();
  return { spent, long, bytes: photo.byteLength };
}
