// A job file on its way in. Photos come before the entries that name them, and
// twice is harmless.

import type { Failure } from './calls.ts';
import { CallFailed } from './line.ts';
import type { DryRun } from './protocol.ts';
import type { Reckoning } from './reckoning.ts';
import type { StoreLine } from './store-line.ts';

export type { DryRun } from './protocol.ts';

export type Progress = (done: number, of: number) => void;

/** What came of bringing it in. */
export interface MergeReport {
  job: string;
  /** Records that look different now; only while that job is open. */
  touched: string[];
  /** Photos and sounds that were brought in. */
  photos: number;
  /** Photos, sounds and chunks that are damaged in the file. */
  damaged: string[];
  /** Why it ended early. What came before that is kept; bringing it in again does the rest. */
  trouble?: Failure;
}

export async function bringIn(store: StoreLine, reckoning: Reckoning, file: File, dry: DryRun, progress?: Progress): Promise<MergeReport> {
  const report: MergeReport = { job: dry.job ?? '', touched: [], photos: 0, damaged: [] };
  const touched = new Set<string>();
  await reckoning.withJobFile(file, async ({ job, members }, read) => {
    report.job = job ?? report.job;
    for (const [index, { index: member, kind, hash, media_type }] of members.entries()) {
      const bytes = await read(member);
      if (!bytes) report.damaged.push(hash);
      else if (kind === 'blob') report.photos += Number(await store.call('bringInBlob', hash, { media_type, bytes }));
      else for (const id of await store.call('bringInChunk', report.job, { name: hash, bytes })) touched.add(id);
      progress?.(index + 1, members.length);
    }
  }).catch((error: unknown) => {
    report.trouble = error instanceof CallFailed ? error.failure : { code: 'read-failed', detail: String(error) };
  });
  return { ...report, touched: [...touched] };
}
