import { DeriveTasks } from './built/derive.js';

/** Stands for the record: it has one task, and keeps nothing. */
function oneTask(photo) {
  return () => ({
    tasks: async () => [{ of: 'photo', begun: 0 }],
    taskBegun: async () => undefined,
    blob: async () => photo,
    keepDerived: async () => undefined,
  });
}

const ways = {
  async ours(bytes) {
    let done = false;
    await new DeriveTasks(oneTask({ bytes: new Uint8Array(bytes), media_type: 'image/jpeg' }), () => (done = true)).run(() => true);
    if (!done) throw new Error('nothing was derived');
  },
  async bare(bytes) {
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
    const canvas = new OffscreenCanvas(2560, 1920);
    canvas.getContext('2d').drawImage(bitmap, 0, 0, 2560, 1920);
    await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
    bitmap.close();
  },
};

self.onmessage = async ({ data: { which, bytes } }) => {
  const from = performance.now();
  await ways[which](bytes);
  self.postMessage({ spent: performance.now() - from });
};
