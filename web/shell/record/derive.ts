// Smaller pictures of photos, made one at a time when nobody waits, and begun
// again after whatever ended the worker. The engines turn pictures upright when
// decoding; JPEG because one of them cannot write the newer forms.

import type { DeriveTask, Record } from '../pkg/record/record.js';

const VIEW_EDGE = 2560;
const THUMB_EDGE = 320;
const QUALITY = 0.85;
/** A photo that has ended the worker so often is left as it came. */
const MOST_BEGUN = 3;

export class DeriveTasks {
  readonly #record: () => Record;
  readonly #done: (hash: string) => void;
  #running = false;

  constructor(record: () => Record, done: (hash: string) => void) {
    this.#record = record;
    this.#done = done;
  }

  /** Works while it may go on. One window does at a time. */
  async run(mayGoOn: () => boolean): Promise<void> {
    if (this.#running || !('OffscreenCanvas' in self)) return;
    this.#running = true;
    try {
      const work = (): Promise<void> => this.#all(mayGoOn);
      if (!('locks' in navigator)) await work();
      else await navigator.locks.request('asfound-derive', { ifAvailable: true }, async (lock) => lock && work());
    } finally {
      this.#running = false;
    }
  }

  async #all(mayGoOn: () => boolean): Promise<void> {
    for (const task of await this.#record().tasks()) {
      if (!mayGoOn()) return;
      if (task.begun < MOST_BEGUN) await this.#one(task);
    }
  }

  async #one({ of, begun }: DeriveTask): Promise<void> {
    await this.#record().taskBegun(of, begun + 1);
    const photo = await this.#record().blob(of);
    if (!photo) return;
    try {
      const [view, thumb] = await smaller(new Blob([photo.bytes], { type: photo.media_type }));
      await this.#record().keepDerived(of, view, thumb);
      this.#done(of);
    } catch (error) {
      if (error instanceof WebAssembly.RuntimeError) throw error;
      // No picture that this engine can read: it stays as it came.
      await this.#record().taskBegun(of, MOST_BEGUN);
    }
  }
}

async function smaller(photo: Blob): Promise<[Uint8Array, Uint8Array]> {
  const bitmap = await createImageBitmap(photo);
  try {
    const view = drawn(bitmap, VIEW_EDGE);
    return [await encoded(view), await encoded(drawn(view, THUMB_EDGE))];
  } finally {
    bitmap.close();
  }
}

function drawn(picture: ImageBitmap | OffscreenCanvas, edge: number): OffscreenCanvas {
  const scale = Math.min(1, edge / Math.max(picture.width, picture.height));
  const [width, height] = [picture.width, picture.height].map((side) => Math.max(1, Math.round(side * scale))) as [number, number];
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no drawing here');
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
  return canvas;
}

async function encoded(canvas: OffscreenCanvas): Promise<Uint8Array> {
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
  return new Uint8Array(await blob.arrayBuffer());
}
