import type { Standing, TagMarks } from '../kit/standing';
import { bytesOf } from './format';
import { marks, standings } from './standings';
import type { Vocabulary } from './vocabulary';

/** What the pieces of the kit say by themselves. */
export const kit = (trade: Vocabulary) => ({
  tagName(number: string, standing: Standing, over: TagMarks, word = ''): string {
    const extra = (Object.keys(marks) as (keyof TagMarks)[]).filter((mark) => over[mark]).map((mark) => marks[mark]);
    return ['tag ' + number, word || standings(trade)[standing], ...extra].join(', ');
  },
  nextTag: 'Next tag',
  photo: 'Photo',
  safe: 'safe',
  saving: 'saving',
  failed: 'not saved',
  kept: 'kept',
  notPromised: 'kept, not promised',
  fileDue: 'file due',
  undo: 'Undo',
  close: 'Close',
  done: 'Done',
  back: 'Back',
  cheapest: 'cheapest',
  reminderDue: 'reminder due',
  workingSource: 'how it came about',
  room: (used: number, total: number) => bytesOf(used, total),
  toThePage: 'To the page',
});
