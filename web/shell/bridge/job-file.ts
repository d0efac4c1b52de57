// A job file on its way in: first looked at, then brought in. Photos come before
// the entries that name them, and twice is harmless.

import type { Failure, NamedBytes, TypedBytes } from './calls.ts';
import type { Problem } from './protocol.ts';
import type { StoreLine } from './store-line.ts';

export type Progress = (done: number, of: number) => void;

/** What a job file holds, and what of it can be used. Nothing was changed. */
export interface DryRun {
  job: string;
  name: string;
  entries: number;
  parts: number;
  photos: number;
  /** Photos and sounds that the record names and the file does not hold. */
  missing: string[];
  problems: Problem[];
  /** Sound chunks. */
  chunks: NamedBytes[];
  /** Where each photo or sound lies in the file. */
  blobs: BlobPlace[];
}

/** Stored bytes inside the file: they are not packed. */
export interface BlobPlace {
  hash: string;
  media_type: string;
  from: number;
  length: number;
}

/** What came of bringing it in. */
export interface MergeReport {
  job: string;
  /** Records that look different now; only while that job is open. */
  touched: string[];
  photos: number;
  /** Photos and chunks that are damaged in the file. */
  damaged: string[];
  trouble?: Failure;
}

export async function bringIn(store: StoreLine, file: File, dry: DryRun, progress?: Progress): Promise<MergeReport> {
  const report: MergeReport = { job: dry.job, touched: [], photos: 0, damaged: [] };
  const of = dry.blobs.length + dry.chunks.length;
  for (const [index, blob] of dry.blobs.entries()) {
    const sound = await store.call('bringInBlob', blob.hash, await bytesOf(file, blob));
    if (sound) report.photos++;
    else report.damaged.push(blob.hash);
    progress?.(index + 1, of);
  }
  const touched = new Set<string>();
  for (const [index, chunk] of dry.chunks.entries()) {
    for (const id of await store.call('bringInChunk', dry.job, chunk)) touched.add(id);
    progress?.(dry.blobs.length + index + 1, of);
  }
  return { ...report, touched: [...touched] };
}

async function bytesOf(file: File, { media_type, from, length }: BlobPlace): Promise<TypedBytes> {
  const bytes = new Uint8Array(await file.slice(from, from + length).arrayBuffer());
  return { media_type, bytes };
}
