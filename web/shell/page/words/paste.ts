import type { Column } from '../paste/table';
import { count } from './format';

/** Rows of a spreadsheet as quotes. */
export const paste = {
  title: 'Paste prices', second: 'rows of a spreadsheet as quotes',
  lead: 'Copy the rows in your spreadsheet, with their heads if there are any, and paste them here. Nothing is changed before you have seen what would be.',
  field: 'Rows', example: 'tag; part; supplier; price', read: 'Look at the rows',
  header: 'The first row', headerYes: 'names the columns', headerNo: 'is a row like the others', decimal: 'Decimals', point: 'point: 1,980.50', comma: 'comma: 1.980,50',
  columns: 'What the columns hold', leave: 'leave out', columnOf: (n: number, head: string) => `Column ${n}${head ? `, ${head}` : ''}`,
  column: {
    tag: 'tag', name: 'name of the part', quantity: 'pieces', makers_number: 'maker’s number', route: 'route', from: 'from whom', cash: 'price', freight: 'freight', tax: 'tax', own_time: 'own time',
    chance: 'fails, in 100', strip_again: 'strip again', life: 'lasts, years', wait: 'wait, days', valid_until: 'valid until',
  } satisfies Record<Column, string>,
  preview: 'What would change', isNew: 'new quote', changes: (what: string) => `changes ${what}`, same: 'as it is already', newPart: 'new part', leftOut: 'left out', row: (n: number) => `row ${n}`,
  summary: (quotes: number, changed: number, parts: number, out: number) =>
    [quotes ? count(quotes, 'new quote') : '', changed ? count(changed, 'changed quote') : '', parts ? count(parts, 'new part') : '', out ? `${count(out, 'row')} left out` : ''].filter(Boolean).join(', ') || 'nothing',
  put: 'Put them down', done: (n: number) => `${count(n, 'row')} put down`,
  none: 'No row could be read. Paste rows with a name or a tag, and a price.',
  problem: {
    route: (word: string) => `“${word}” is no route.`, noPart: (tag: string) => (tag ? `No part has the tag ${tag}.` : 'It names no part.'), nothing: 'No figure in it.', unread: (column: string, text: string) => `“${text}” cannot be read as ${column}.`,
  },
};
