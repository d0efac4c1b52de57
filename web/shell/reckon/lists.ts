import type { ReckonQuestion } from '../bridge/calls.ts';
import { type Copy, partsCsv } from '../pkg/reckon/reckon.js';
import type { Database } from './database.ts';
import { fileName } from './job-file-out.ts';

type ListQuestion = Extract<ReckonQuestion, { ask: 'list' }>;

/** The parts list as a file. */
export async function partsList(_database: Database, copy: Copy, { kind, name, query, words }: ListQuestion): Promise<File> {
  if (kind === 'parts-html') throw new Error('the list as a page is not there yet');
  return new File([partsCsv(copy, query, words)], `${fileName(name)}.csv`, { type: 'text/csv' });
}
