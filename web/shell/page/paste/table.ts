// A table as it comes out of a spreadsheet: which signs stand between cells, which for decimals, what the columns hold.

import Papa from 'papaparse';
import { minorDigits, type Money } from '../words/format';

/** What a column may hold. */
export const COLUMNS = ['tag', 'name', 'quantity', 'makers_number', 'route', 'from', 'cash', 'freight', 'tax', 'own_time', 'chance', 'strip_again', 'life', 'wait', 'valid_until'] as const;
export type Column = (typeof COLUMNS)[number];

export type DecimalSign = '.' | ',';

export interface Table { rows: string[][]; header: boolean; columns: (Column | '')[]; decimal: DecimalSign }

/** Words that heads of columns begin with, in the order in which they are tried. */
const HEADS: readonly (readonly [Column, RegExp])[] = [
  ['makers_number', /^(maker|part n|part #|p\/?n\b|number|order n)/], ['tag', /^(tag|label)/], ['route', /^(route|way)/], ['from', /^(from|supplier|specialist|shop|seller|source)/],
  ['freight', /^(freight|shipping|postage|carriage|delivery cost)/], ['tax', /^(tax|vat|gst)/], ['cash', /^(cash|price|cost|sum|amount|each|total)/], ['own_time', /^(own|hours|labour|labor|time)/],
  ['chance', /^(chance|fails|risk)/], ['strip_again', /^(strip)/], ['life', /^(life|lasts|years)/], ['wait', /^(wait|lead|days)/], ['valid_until', /^(valid|until|expires)/],
  ['quantity', /^(quantity|qty|pieces|pcs|count|no\. off)/], ['name', /^(name|part|item|description|what)/],
];

/** Reads what was pasted: tab, semicolon or comma between cells, quotes as a spreadsheet writes them. */
export function readTable(text: string): Table {
  const { data } = Papa.parse<string[]>(text.trim(), { skipEmptyLines: 'greedy', delimitersToGuess: ['\t', ';', ','] });
  const rows = data.map((row) => row.map((cell) => cell.trim()));
  const wide = Math.max(0, ...rows.map((row) => row.length));
  const guessed = guessHeads(rows[0] ?? [], wide);
  const header = guessed.filter(Boolean).length >= Math.min(2, wide) && wide > 0;
  return { rows, header, columns: header ? guessed : guessed.map(() => ''), decimal: guessDecimal(rows) };
}

function guessHeads(heads: readonly string[], wide: number): (Column | '')[] {
  const taken = new Set<Column>();
  return Array.from({ length: wide }, (_, at) => {
    const head = (heads[at] ?? '').toLowerCase();
    const found = HEADS.find(([column, pattern]) => !taken.has(column) && pattern.test(head))?.[0];
    if (found) taken.add(found);
    return found ?? '';
  });
}

/** The sign that stands last before one or two figures most often is the one for decimals. */
function guessDecimal(rows: readonly (readonly string[])[]): DecimalSign {
  const cells = rows.flat();
  const ending = (sign: string): number => cells.filter((cell) => new RegExp(`\\d\\${sign}\\d{1,2}\\D*$`).test(cell) && !/^\d+[.,]\d+[.,]\d{4}$/.test(cell)).length;
  return ending(',') > ending('.') ? ',' : '.';
}

/** A number as it stands in the table: "1.980,50" or "1,980.50". */
export function readDecimal(text: string, decimal: DecimalSign): number | null {
  const plain = digitsOf(text, decimal);
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : null;
}

/** Money as it stands in the table, exact by its digits. */
export function readSum(text: string, decimal: DecimalSign, currency: string): Money | null {
  const [whole = '', part = '', ...more] = digitsOf(text, decimal).split('.');
  const digits = minorDigits(currency);
  if (!/^\d+$/.test(whole) || !/^\d*$/.test(part) || more.length > 0 || part.replace(/0+$/, '').length > digits) return null;
  const minor = Number(whole + part.slice(0, digits).padEnd(digits, '0'));
  return Number.isSafeInteger(minor) ? { minor, currency } : null;
}

function digitsOf(text: string, decimal: DecimalSign): string {
  const thousands = decimal === ',' ? /[.\s\u00a0'’](?=\d{3}(\D|$))/g : /[,\s\u00a0'’](?=\d{3}(\D|$))/g;
  return text.trim().replace(/\p{Sc}|[A-Z]{3}|%/gu, '').trim().replace(thousands, '').replace(decimal, '.');
}

/** A day as people write it: 2026-05-01, 1.5.2026, 01/05/2026 (day before month). */
export function readDay(text: string): string | null {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text.trim());
  const other = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/.exec(text.trim());
  const [year, month, day] = iso ? [iso[1], iso[2], iso[3]] : other ? [other[3], other[2], other[1]] : [];
  if (!year || !month || !day) return null;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return date.getUTCMonth() === Number(month) - 1 && date.getUTCDate() === Number(day) ? date.toISOString().slice(0, 10) : null;
}
