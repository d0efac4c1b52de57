// The reckoning worker: heavy questions over a copy of the job. It may be ended
// at any moment and writes nothing that anybody would miss.

import type { Call, Carried, Failure, ReckonCalls, ReckonNews, ReckonQuestion, Reply } from '../bridge/calls.ts';
import init, { busy, Copy, readFrame, weigh } from '../pkg/reckon/reckon.js';
import wasm from '../pkg/reckon/reckon_bg.wasm?url';
import { Database } from './database.ts';
import { JobFile } from './job-file-in.ts';
import { jobFileOut } from './job-file-out.ts';
import { partsList } from './lists.ts';
import { luminance } from './luminance.ts';
import { tags } from './tags.ts';
import { wallSheet } from './wall-sheet.ts';

const loaded = init({ module_or_path: wasm });
let opened: JobFile | undefined;

const calls: Carried<ReckonCalls> = {
  async reckon(question) {
    await loaded;
    if (question.ask === 'busy') return busy(question.seconds);
    const database = await Database.open();
    try {
      return await reckoned(question, database);
    } finally {
      database.close();
    }
  },
  async openJobFile(file) {
    await loaded;
    opened = new JobFile(file);
    return opened.contents;
  },
  readMember: async (index) => opened?.read(index),
  async readFrame(pixels, width, height) {
    await loaded;
    return readFrame(luminance(new Uint8Array(pixels), width * height), width, height);
  },
};

/** How often what is worked out is told while it becomes better, in milliseconds; the first is told at once. */
const TOLD_EVERY = 400;

function everySoOften(): () => boolean {
  let last = -Infinity;
  return () => {
    const now = performance.now();
    if (now - last < TOLD_EVERY) return false;
    last = now;
    return true;
  };
}

async function reckoned(question: Exclude<ReckonQuestion, { ask: 'busy' }>, database: Database): Promise<unknown> {
  switch (question.ask) {
    case 'read-job-file':
      return new JobFile(question.file).dryRun(database);
    case 'job-file':
      return jobFileOut(database, await database.copy(question.job), question.name, question.words, (done, of) => tell({ news: 'progress', done, of }));
    case 'weigh':
      return weigh(await database.copy(question.job), question.query, everySoOften(), (answer) => tell({ news: 'so-far', answer }));
    case 'tags':
      // Numbers alone need nothing of the job.
      return tags(question.paper.labels?.of === 'blank' ? new Copy() : await database.copy(question.job), question);
    case 'wall-sheet':
      return wallSheet(database, await database.copy(question.job), question);
    case 'list':
      return partsList(database, await database.copy(question.job), question);
  }
}

self.addEventListener('message', ({ data }: MessageEvent<Call<ReckonCalls>>) => void carryOut(data));

async function carryOut({ call, name, args }: Call<ReckonCalls>): Promise<void> {
  try {
    const work = calls[name] as (...given: unknown[]) => Promise<unknown>;
    answer({ call, value: await work(...args), safe: 0 });
  } catch (error) {
    if (error instanceof WebAssembly.RuntimeError) return tell({ news: 'trapped', detail: String(error) });
    answer({ call, failure: failureOf(error), safe: 0 });
  }
}

/** A problem keeps its code; anything else is told in the engine's words. */
function failureOf(error: unknown): Failure {
  if (typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string') {
    return { code: error.code, detail: JSON.stringify(error) };
  }
  return { code: 'reckoning-failed', detail: error instanceof Error ? error.message : String(error) };
}

function answer(reply: Reply): void {
  self.postMessage(reply);
}

function tell(news: ReckonNews): void {
  self.postMessage(news);
}
