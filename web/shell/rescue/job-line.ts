// What a job is called, how much was said in it and when last, from its entries:
// a job that was brought in and never opened has no line of its own yet.

import { entriesOf } from './chunk.ts';
import { entryOf, type Entry } from './entry.ts';
import type { Job, Stored } from './stored.ts';

const NAME = 2;
/** No day can be told beyond this: a clock that says so is wrong. */
const LAST_DAY = 8.64e15;

export interface JobLine {
  name: string;
  /** Null where something of it could not be read. */
  entries: number | null;
  /** When something was last said; null where nothing can be read. */
  last: number | null;
}

export async function lineOf(stored: Stored, job: Job): Promise<JobLine> {
  const entries = new Map<string, Entry>();
  let whole = true;
  const attempt = async (work: () => Promise<Entry[]>): Promise<void> => {
    // What cannot be read is saved as it is all the same.
    for (const entry of await work().catch((): Entry[] => { whole = false; return []; })) entries.set(entry.id, entry);
  };
  for (const name of job.chunks) await attempt(async () => entriesOf(new Uint8Array((await stored.bytes('chunk', [job.id, name])).bytes)));
  for (const [replica, seq] of job.entries) await attempt(async () => [entryOf(new Uint8Array((await stored.bytes('tail', [job.id, replica, seq])).bytes))]);
  const all = [...entries.values()];
  const days = all.map(({ at }) => at).filter((at) => Math.abs(at) <= LAST_DAY);
  return { name: nameOf(job.id, all) || job.name, entries: whole ? all.length : null, last: days.reduce<number | null>((last, at) => Math.max(last ?? at, at), null) };
}

/** The name that nothing overwrote; of several that of the greatest entry, as everywhere. */
export function nameOf(record: string, entries: readonly Entry[]): string {
  const written = entries.flatMap(({ id, ops }) => ops.filter((op) => op.record === record && op.field === NAME).map((op) => ({ id, op })));
  const over = new Set(written.flatMap(({ id, op }) => op.over.filter((entry) => entry !== id)));
  const standing = written.filter(({ id, op }) => !over.has(id) && op.text !== undefined);
  return standing.sort((a, b) => (a.id < b.id ? -1 : 1)).at(-1)?.op.text ?? '';
}
