import type { ReckonQuestion } from '../bridge/calls.ts';
import { type Copy, partsCsv, partsHtml, photosOfList, Pictures } from '../pkg/reckon/reckon.js';
import type { Database } from './database.ts';
import { fileName } from './job-file-out.ts';

type ListQuestion = Extract<ReckonQuestion, { ask: 'list' }>;

/** The parts list as a file. */
export async function partsList(database: Database, copy: Copy, { kind, name, query, words }: ListQuestion): Promise<File> {
  if (kind === 'parts-csv') return new File([partsCsv(copy, query, words)], `${fileName(name)}.csv`, { type: 'text/csv' });
  const pictures = new Pictures();
  for (const photo of photosOfList(copy, query)) {
    const thumb = await database.thumb(photo);
    if (thumb) pictures.add(photo, thumb);
  }
  return new File([partsHtml(copy, query, pictures, words)], `${fileName(name)}.html`, { type: 'text/html' });
}
