// What a pasted table would change, row by row, before anything is written.

import type { Change, Command, Currency, PartLine, QuoteCost, Route } from '../../bridge/protocol';
import { tagFigures } from '../parts/tag-figures';
import { words } from '../words';
import { readHours } from '../words/read';
import { ROUTES_IN_ORDER, routeWord } from '../routes/route-word';
import { readDay, readDecimal, readSum, type Column, type Table } from './table';

/** One row: what it is about, what it would do, or why it is left out. */
export interface Row {
  number: number;
  part: PartLine | null;
  name: string;
  /** The quote that is there already, of the same route and the same supplier. */
  quote: QuoteCost | null;
  route: Route | null;
  changes: Change[];
  ofPart: Change[];
  problem: string;
}

export interface Known { parts: readonly PartLine[]; quotes: (part: string) => readonly QuoteCost[]; currency: Currency }

/** Reads every row of a table against what is recorded. */
export function planOf(table: Table, known: Known): Row[] {
  const rows = table.header ? table.rows.slice(1) : table.rows;
  return rows.map((cells, at) => rowOf(cells, at + 1 + (table.header ? 1 : 0), table, known));
}

function rowOf(cells: readonly string[], number: number, table: Table, known: Known): Row {
  const cell = (column: Column): string => cellOf(cells, table, column);
  const part = partOf(cell('tag'), cell('name'), known.parts);
  const route = cell('route') ? routeOf(cell('route')) : 'buy';
  const { changes, problem } = changesOf(cell, table, known.currency);
  const from = cell('from');
  const same = ({ route: one, record }: QuoteCost): boolean => one === route && (record.values.from ?? '') === from;
  const quote = part && route ? known.quotes(part.id).find(same) ?? null : null;
  const say = words().paste.problem;
  const wrong = problem || (route === null ? say.route(cell('route')) : '') || (!part && !cell('name') ? say.noPart(cell('tag')) : '') || (part === null && cell('tag') && !cell('name') ? say.noPart(cell('tag')) : '');
  return { number, part, name: cell('name') || part?.name || '', quote, route, changes, ofPart: partChanges(cell, part, table), problem: wrong || (changes.length === 0 ? say.nothing : '') };
}

/** The parts that a table names. */
export function partsNamed(table: Table, parts: readonly PartLine[]): PartLine[] {
  const named = table.rows.map((cells) => partOf(cellOf(cells, table, 'tag'), cellOf(cells, table, 'name'), parts));
  return [...new Set(named.filter((part) => part !== null))];
}

function cellOf(cells: readonly string[], { columns }: Table, column: Column): string {
  return cells[columns.indexOf(column)] ?? '';
}

/** The part of a tag, else the only one of that name. */
function partOf(tag: string, name: string, parts: readonly PartLine[]): PartLine | null {
  const figures = tag.replace(/\D/g, '');
  if (figures) return parts.find((part) => part.tag === Number(figures)) ?? null;
  const named = parts.filter((part) => name && part.name.toLowerCase() === name.toLowerCase());
  return named.length === 1 ? named[0] ?? null : null;
}

/** The route of a word: as it is shown, or as it is stored. */
function routeOf(word: string): Route | null {
  const plain = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, '');
  return ROUTES_IN_ORDER.find((route) => plain(route) === plain(word) || plain(routeWord(route)) === plain(word)) ?? null;
}

const MONEY = ['cash', 'freight', 'tax'] as const;
const HOURS = ['own_time', 'strip_again'] as const;

function changesOf(cell: (column: Column) => string, { decimal }: Table, currency: Currency): { changes: Change[]; problem: string } {
  const say = words().paste.problem;
  const changes: Change[] = [];
  let problem = '';
  const take = (column: Column, read: (text: string) => Change | null): void => {
    const text = cell(column);
    if (!text) return;
    const change = read(text);
    if (change) changes.push(change);
    else problem ||= say.unread(words().paste.column[column], text);
  };
  for (const column of MONEY) take(column, (text) => { const sum = readSum(text, decimal, currency); return sum && ({ [column]: sum } as Record<typeof column, typeof sum> as unknown as Change); });
  for (const column of HOURS) take(column, (text) => { const minutes = readHours(decimal === ',' ? text : text.replace(/,/g, '')); return minutes === null ? null : ({ [column]: minutes } as Record<typeof column, number> as unknown as Change); });
  take('chance', (text) => { const of100 = readDecimal(text, decimal); return of100 === null || of100 > 100 ? null : { chance: Math.round(of100 * 100) }; });
  take('life', (text) => { const years = readDecimal(text, decimal); return years === null || years <= 0 || years > 100 ? null : { life: Math.max(1, Math.round(years * 12)) }; });
  take('wait', (text) => { const days = readDecimal(text, decimal); return days === null || days > 3650 ? null : { wait: Math.round(days) }; });
  take('valid_until', (text) => { const day = readDay(text); return day === null ? null : { valid_until: day }; });
  return { changes, problem };
}

/** What a row says of a part that is not there yet. */
function partChanges(cell: (column: Column) => string, part: PartLine | null, { decimal }: Table): Change[] {
  if (part) return [];
  const pieces = readDecimal(cell('quantity'), decimal);
  const tag = Number(cell('tag').replace(/\D/g, ''));
  return [{ name: cell('name') }, ...(pieces && Number.isInteger(pieces) ? [{ quantity: pieces }] : []), ...(cell('makers_number') ? [{ makers_number: cell('makers_number') }] : []), ...(tag > 0 ? [{ tag }] : []), { from_boxes: true }];
}

/** The rows as one command, so that one undo takes them all back. Rows of one new part share it. */
export function commandOf(rows: readonly Row[], from: (row: Row) => string, newId: () => string): Command {
  const made = new Map<string, string>();
  const commands: Command[] = [];
  for (const row of rows.filter(({ problem }) => !problem)) {
    let part = row.part?.id ?? made.get(row.name.toLowerCase());
    if (!part) {
      part = newId();
      made.set(row.name.toLowerCase(), part);
      commands.push({ do: 'create', id: part, kind: 'part', changes: row.ofPart });
    }
    const said = [...row.changes, ...(row.changes.some((change) => 'cash' in change) ? [{ cash_certainty: 'sure' as const }] : [])];
    // A price for all takes the place of one for a piece.
    const isForAll = row.quote?.record.values.rate !== undefined && said.some((change) => 'cash' in change);
    if (row.quote) commands.push({ do: 'change', ids: [row.quote.id], changes: [...said, ...(isForAll ? [{ clear: 'rate' as const }, { clear: 'rate_basis' as const }] : [])], seen: row.quote.record.seen });
    else commands.push({ do: 'create', id: newId(), kind: 'quote', changes: [{ of: part }, { route: row.route ?? 'buy' }, ...(from(row) ? [{ from: from(row) }] : []), ...said] });
  }
  return { do: 'all', commands };
}

/** The part of a row in words. */
export function partSaid({ part, name }: Row): string {
  return part ? [tagFigures(part.tag), part.name].filter(Boolean).join(' ') : name;
}
