import type { ReckonQuestion } from '../bridge/calls.ts';
import { type Copy, errandsCsv, errandsHtml, partsCsv, partsHtml, photosOfList, Pictures } from '../pkg/reckon/reckon.js';
import type { Database } from './database.ts';
import { fileName } from './job-file-out.ts';

type ListQuestion = Extract<ReckonQuestion, { ask: 'list' }>;

/** A list as a file: all parts, or what is to be bought or sent out. Lists of errands have their kind in their names. */
export async function partsList(database: Database, copy: Copy, { kind, name, query, today, words }: ListQuestion): Promise<File> {
  const send = kind === 'to-send-csv' || kind === 'to-send-html';
  const parts = kind === 'parts-csv' || kind === 'parts-html';
  const called = parts ? fileName(name) : `${fileName(name)}-${send ? 'to-send' : 'to-buy'}`;
  if (kind === 'parts-csv' || kind === 'to-buy-csv' || kind === 'to-send-csv') {
    const table = parts ? partsCsv(copy, query, today, words) : errandsCsv(copy, send, query, today, words);
    return new File([table], `${called}.csv`, { type: 'text/csv' });
  }
  const pictures = new Pictures();
  for (const photo of photosOfList(copy, query)) {
    const thumb = await database.thumb(photo);
    if (thumb) pictures.add(photo, thumb);
  }
  const page = parts ? partsHtml(copy, query, today, pictures, words) : errandsHtml(copy, send, query, today, pictures, words);
  return new File([page], `${called}.html`, { type: 'text/html' });
}
