// The record worker: it alone writes to the database. Each message is a call
// by name; see ../bridge/calls.ts. Stored first, then answered.

import type { Call, Carried, Failure, RecordCalls, RecordNews, Reply } from '../bridge/calls.ts';
import init, { Record } from '../pkg/record/record.js';
import wasm from '../pkg/record/record_bg.wasm?url';
import { DeriveTasks } from './derive.ts';
import { Idle } from './idle.ts';
import { InOrder } from './in-order.ts';
import { nameBesides } from './beside.ts';
import { Windows } from './windows.ts';

const DATABASE = 'asfound';
/** Sealing begins here, so that the tail stays quick to read. */
const SEAL_AT = 1_500;

const inOrder = new InOrder();
const loaded = init({ module_or_path: wasm });
let opened: Record | undefined;
/** Loaded only where the page's address asks for it. */
let hooks: typeof import('./faults.ts') | undefined;

function record(): Record {
  if (!opened) throw { code: 'connection-lost', detail: 'the database is not open' } satisfies Failure;
  return opened;
}

const windows = new Windows({
  hear: (job, replica, last) => inOrder.run(async () => changed(job, await record().hear(job, replica, last))),
});
const derive = new DeriveTasks(record, (hash) => tell({ news: 'derived', hash }));
const idle = new Idle(async () => {
  if (!opened) return;
  await inOrder.run(() => record().noteLine());
  await inOrder.run(() => seal());
  await derive.run(() => idle.isIdle());
});

const calls: Carried<RecordCalls> = {
  load: async () => void (await loaded),
  async start(faults) {
    await loaded;
    if (faults) hooks = await import('./faults.ts');
    for (const fault of faults ?? []) await hooks?.applyFault(fault, true);
    opened = await Record.start(DATABASE);
    idle.poke();
    return { replica: opened.replica() };
  },
  jobs: async () => await record().jobs(),
  begin: (job) => inOrder.run(async () => record().begin(job)),
  open: (job) => inOrder.run(() => record().open(job)),
  command: (job, sent, beside) =>
    idle.during(() => inOrder.run(async () => {
      // Sent while another job was being opened: never written into that one.
      if (record().current() !== job) throw { code: 'read-failed', detail: 'this job is not open' } satisfies Failure;
      const named = await nameBesides(sent, beside);
      hooks?.beforeCommand();
      const answer = await twice(() => record().command(named.sent, named.beside));
      await hooks?.beforeAnswer();
      if (answer.ok && answer.job && answer.entry) windows.tell(answer.job, answer.entry);
      return answer;
    })),
  ask: async (query) => record().ask(query),
  catchUp: () => inOrder.run(() => record().catchUp()),
  bringInBlob: (name, { media_type, bytes }) => inOrder.run(() => record().bringInBlob(name, media_type, bytes)),
  bringInChunk: (job, chunk) =>
    inOrder.run(async () => {
      const touched = await record().bringInChunk(job, chunk.name, chunk.bytes);
      windows.tellAll(job);
      idle.poke();
      return touched;
    }),
  thumb: (of) => derived(of, 'thumb'),
  view: (of) => derived(of, 'view'),
  photo: async (of) => await record().blob(of),
  probe: () => record().probe(),
  fault: async (fault, on) => hooks?.applyFault(fault, on),
};

/** A connection that no longer answers is replaced, once. The command is known by its id, so it is not done twice. */
async function twice(command: () => ReturnType<Record['command']>): ReturnType<Record['command']> {
  const answer = await command();
  if (answer.trouble?.code !== 'connection-lost') return answer;
  try {
    await record().reopen();
  } catch {
    return answer;
  }
  return command();
}

async function derived(of: string, size: 'thumb' | 'view'): ReturnType<Carried<RecordCalls>['thumb']> {
  const bytes = await record().derived(of, size);
  return bytes && { media_type: 'image/jpeg', bytes };
}

/** One window seals at a time; where locks are missing two may, which is harmless. */
async function seal(): Promise<void> {
  const work = (): Promise<boolean> => record().seal(SEAL_AT);
  if (!('locks' in navigator)) return void (await work());
  await navigator.locks.request('asfound-seal', { ifAvailable: true }, async (lock) => lock && work());
}

function changed(job: string, ids: string[]): void {
  if (ids.length > 0) tell({ news: 'changed', job, ids });
}

function tell(news: RecordNews): void {
  self.postMessage(news);
}

function answer(reply: Reply): void {
  self.postMessage(reply);
}

self.addEventListener('message', ({ data }: MessageEvent<Call<RecordCalls>>) => void carryOut(data));

async function carryOut({ call, name, args }: Call<RecordCalls>): Promise<void> {
  try {
    const work = calls[name] as (...given: unknown[]) => Promise<unknown>;
    const value = await work(...args);
    answer({ call, value, safe: opened?.safe() ?? 0 });
  } catch (error) {
    if (error instanceof WebAssembly.RuntimeError) return trapped(error);
    answer({ call, failure: failureOf(error), safe: opened?.safe() ?? 0 });
  }
}

function failureOf(error: unknown): Failure {
  if (typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string') {
    return { code: error.code, detail: 'detail' in error ? String(error.detail) : '' };
  }
  return { code: 'read-failed', detail: String(error) };
}

/** A panic cannot be caught: what is in memory is worth nothing any more. The page starts another worker. */
function trapped(error: unknown): void {
  tell({ news: 'trapped', detail: String(error) });
  self.close();
}

self.addEventListener('error', (event) => event.error instanceof WebAssembly.RuntimeError && trapped(event.error));
self.addEventListener('unhandledrejection', (event) => event.reason instanceof WebAssembly.RuntimeError && trapped(event.reason));
