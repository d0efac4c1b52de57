import { type Copy, JobFileOut } from '../pkg/reckon/reckon.js';
import type { JobFileMade } from '../bridge/calls.ts';
import type { Database } from './database.ts';
import { newSink } from './sink.ts';

/** Everything of a job in one file. No more than one photo is in memory. */
export async function jobFileOut(database: Database, copy: Copy, name: string, words: unknown, progress: (done: number, of: number) => void): Promise<JobFileMade> {
  const sink = await newSink();
  try {
    const out = JobFileOut.begin(copy, words, (bytes) => sink.write(bytes));
    const held = out.held();
    const wanted = out.wanted();
    for (const [index, hash] of wanted.entries()) {
      progress(index, wanted.length);
      const bytes = await database.blob(hash);
      // One that is missing or damaged must not hold back all others; it is told in the end.
      if (bytes) out.blob(hash, bytes);
    }
    const missing = out.finish().length;
    progress(wanted.length, wanted.length);
    return { file: await sink.file(`${fileName(name)}.zip`, 'application/zip'), missing, held };
  } catch (error) {
    await sink.discard().catch(() => undefined);
    throw error;
  }
}

/** The name of the job and the day, in signs that every system takes. */
export function fileName(name: string): string {
  const plain = name.normalize('NFKD').replaceAll(/[^\p{Letter}\p{Number}]+/gu, '-').replaceAll(/^-+|-+$/g, '').slice(0, 60);
  const now = new Date();
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
  return [plain || 'job', day].join('-');
}
