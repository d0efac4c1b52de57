import { type Copy, JobFileOut } from '../pkg/reckon/reckon.js';
import type { Database } from './database.ts';
import { newSink } from './sink.ts';

/** Everything of a job in one file. No more than one photo is in memory. */
export async function jobFileOut(database: Database, copy: Copy, name: string, words: unknown, progress: (done: number, of: number) => void): Promise<File> {
  const sink = await newSink();
  try {
    const out = JobFileOut.begin(copy, words, (bytes) => sink.write(bytes));
    const wanted = out.wanted();
    for (const [index, hash] of wanted.entries()) {
      progress(index, wanted.length);
      const bytes = await database.blob(hash);
      // One that is missing or damaged must not hold back all others; the file says by itself what it does not hold.
      if (bytes) out.blob(hash, bytes);
    }
    out.finish();
    progress(wanted.length, wanted.length);
    return await sink.file(`${fileName(name)}.zip`, 'application/zip');
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
