import type { ReckonQuestion } from '../bridge/calls.ts';
import { type Copy, photosOfRefit, Pictures, refitHtml } from '../pkg/reckon/reckon.js';
import type { Database } from './database.ts';
import { fileName } from './job-file-out.ts';

type SheetQuestion = Extract<ReckonQuestion, { ask: 'wall-sheet' }>;

/** The steps of one assembly as a page for the wall. */
export async function wallSheet(database: Database, copy: Copy, { name, assembly, called, today, words }: SheetQuestion): Promise<File> {
  const pictures = new Pictures();
  for (const photo of photosOfRefit(copy, assembly)) {
    const thumb = await database.thumb(photo);
    if (thumb) pictures.add(photo, thumb);
  }
  const page = refitHtml(copy, assembly, today, pictures, words);
  return new File([page], `${fileName(`${name} ${called}`)}.html`, { type: 'text/html' });
}
