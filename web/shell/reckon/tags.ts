import type { ReckonQuestion } from '../bridge/calls.ts';
import type { TagSheetView } from '../bridge/protocol.ts';
import { type Copy, tagsPdf, tagsView } from '../pkg/reckon/reckon.js';
import { fileName } from './job-file-out.ts';

type TagsQuestion = Extract<ReckonQuestion, { ask: 'tags' }>;

/** Sheets of tags as a file, or the first of them to be looked at. */
export function tags(copy: Copy, { name, paper, view, words }: TagsQuestion): File | TagSheetView {
  if (view) return tagsView(copy, paper, words);
  return new File([tagsPdf(copy, paper, words) as Uint8Array<ArrayBuffer>], `${fileName(name)}-tags.pdf`, { type: 'application/pdf' });
}
