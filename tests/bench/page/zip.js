// A general library's archive of the same photos: read from the database, stored, not packed.

import { downloadZip } from './peers/client-zip.js';

function done(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function* photos(database) {
  const keys = await done(database.transaction('photo').objectStore('photo').getAllKeys());
  for (const key of keys) {
    const { bytes } = await done(database.transaction('photo').objectStore('photo').get(key));
    yield { name: `${String(key)}.jpg`, input: bytes, lastModified: new Date(0) };
  }
}

/** Megabytes and milliseconds into a scratch file of the browser. */
export async function peerZip() {
  const database = await done(indexedDB.open('asfound'));
  const root = await navigator.storage.getDirectory();
  const file = await root.getFileHandle('peer.zip', { create: true });
  const from = performance.now();
  await downloadZip(photos(database)).body.pipeTo(await file.createWritable());
  const spent = performance.now() - from;
  const { size } = await file.getFile();
  await root.removeEntry('peer.zip');
  database.close();
  return { spent, size };
}
