// The bare operations: the browser's database with nothing around it.

import { another, picture, twelveMegapixels } from './pictures.js';

function done(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function scratch() {
  const opening = indexedDB.open('bare', 1);
  opening.onupgradeneeded = () => ['photo', 'tail', 'task'].forEach((store) => opening.result.createObjectStore(store));
  return await done(opening);
}

/** One strict transaction with a photo of so many bytes, an entry and a task; `times` of them, each alone. */
export async function barePuts(size, times) {
  const database = await scratch();
  const spent = [];
  for (let i = 0; i < times; i++) {
    const bytes = crypto.getRandomValues(new Uint8Array(Math.min(size, 65536)));
    const photo = new Uint8Array(size);
    for (let at = 0; at < size; at += bytes.length) photo.set(bytes.subarray(0, Math.min(bytes.length, size - at)), at);
    spent.push(await put(database, photo.buffer));
  }
  database.close();
  return spent;
}

async function put(database, bytes) {
  const key = crypto.randomUUID();
  const from = performance.now();
  const transaction = database.transaction(['photo', 'tail', 'task'], 'readwrite', { durability: 'strict' });
  transaction.objectStore('photo').put({ bytes, media_type: 'image/jpeg' }, key);
  transaction.objectStore('tail').put({ bytes: new ArrayBuffer(300) }, key);
  transaction.objectStore('task').put(0, key);
  transaction.commit();
  await new Promise((resolve, reject) => {
    transaction.oncomplete = resolve;
    transaction.onabort = () => reject(transaction.error);
  });
  return performance.now() - from;
}

/** Photos of a weight as a person's files, for the app to take in. */
export async function photosOf(count, kind) {
  const jpeg = kind === '12' ? await twelveMegapixels() : await picture(1600, 1200, 30, 0.8);
  return Array.from({ length: count }, (_, i) => another(jpeg, i));
}

export async function timedPhotosBeside(count, kind) {
  const photos = await photosOf(count, kind);
  const ours = await globalThis.bench.timedPhotos(photos);
  return { ours, bare: await barePuts(photos[0].byteLength, count), bytes: photos[0].byteLength };
}
