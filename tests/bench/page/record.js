// The shipped record wasm, called straight: no worker, no message in between.

import init, { Record, hashOf } from './record/record.js';

let record;

/** The record over a database; the app's own is named `asfound`. */
export async function startRecord(database) {
  await init({ module_or_path: new URL('./record/record_bg.wasm', import.meta.url) });
  record = await Record.start(database);
}

export function theRecord() {
  return record;
}

export { hashOf };

export function newId() {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Carries out a command, or fails loudly. */
export async function carryOut(command, beside = []) {
  const answer = await record.command({ id: newId(), command }, beside);
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer;
}

/** A job by its id; the page of the app will come up in it, at an address. */
export async function newJob(job, hash) {
  record.begin(job);
  await carryOut({ do: 'create', id: job, kind: 'job', changes: [{ name: 'Bench' }] });
  comeUpIn(job, hash);
}

/** The app will come up in a job at an address: a line of its journal. */
export function comeUpIn(job, hash) {
  localStorage.setItem('asfound.where', JSON.stringify({ at: Date.now(), value: { job, hash, strips: {} } }));
}

/** Opens a job: how long loading and folding takes, without the app around it. */
export async function timedOpen(job) {
  const from = performance.now();
  const answer = await record.open(job);
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return performance.now() - from;
}

/** Renames one part after the other: command to answer. */
export async function timedRenames(ids) {
  const spent = [];
  for (const id of ids) {
    const command = { do: 'change', ids: [id], changes: [{ name: `Renamed ${spent.length} bearing bracket` }] };
    const from = performance.now();
    await carryOut(command);
    spent.push(performance.now() - from);
  }
  return spent;
}

/** A photo with a new part: command to answer, for bytes that are there already. */
export async function timedPhotos(photos) {
  const spent = [];
  for (const bytes of photos) {
    const from = performance.now();
    const hash = hashOf(new Uint8Array(bytes));
    const [part, photo] = [newId(), newId()];
    const changes = [{ of: part }, { moment: 'off' }, { shot: 'plain' }, { taken: Date.now() }, { order: 1 }, { blob: hash }, { length: bytes.byteLength }, { media_type: 'image/jpeg' }];
    const commands = [{ do: 'create', id: part, kind: 'part', changes: [] }, { do: 'create', id: photo, kind: 'photo', changes }];
    await carryOut({ do: 'all', commands }, [{ hash, media_type: 'image/jpeg', bytes }]);
    spent.push(performance.now() - from);
  }
  return spent;
}
