// What a pasted list of a kit says, line by line: as a table with heads, or as people write lists.

import type { ContentsLine } from '../../bridge/protocol';
import { readDecimal, readTable, type Column, type Table } from '../paste/table';

/** The lines of a list; a line in which nothing stands is left out. */
export function readLines(text: string): ContentsLine[] {
  const table = readTable(text);
  const lines = table.header ? table.rows.slice(1).map((cells) => byHeads(cells, table)) : table.rows.map(byLook);
  return lines.filter(({ number, name }) => number || name);
}

function byHeads(cells: readonly string[], { columns, decimal }: Table): ContentsLine {
  const cell = (column: Column): string => cells[columns.indexOf(column)] ?? '';
  const pieces = readDecimal(cell('quantity').replace(/^[x×]|[x×]$/gi, ''), decimal);
  return lineOf(cell('makers_number'), cell('name'), pieces);
}

/** Without heads a bare whole number counts pieces, what is figures with letters is a number, the rest is a name. */
function byLook(cells: readonly string[]): ContentsLine {
  // One cell holds it all, parted by wide gaps or not at all.
  const parts = cells.filter(Boolean).length > 1 ? cells : (cells[0] ?? '').split(/\s{2,}/);
  let [number, pieces] = ['', null as number | null];
  const names: string[] = [];
  for (const part of parts.map((one) => one.trim()).filter(Boolean)) {
    if (pieces === null && COUNT.test(part)) pieces = Number(part.replace(/\D/g, ''));
    else if (!number && isNumber(part)) number = part;
    else names.push(part);
  }
  let name = names.join(' ');
  // "2 x Hub seal", "Hub seal (2)", "Hub seal x2".
  const counted = /^(\d{1,3})\s*(?:x|×|off|pcs?\.?)\s+(.+)$/i.exec(name) ?? /^(\d{1,2})\s+(\D.+)$/.exec(name);
  if (pieces === null && counted) [pieces, name] = [Number(counted[1]), counted[2] ?? ''];
  const trailing = /^(.+?)[\s,]*(?:[x×]\s*(\d{1,3})|\((\d{1,3})\))$/i.exec(name);
  if (pieces === null && trailing) [pieces, name] = [Number(trailing[2] ?? trailing[3]), trailing[1] ?? ''];
  // The number may stand at either end of the words.
  const words = name.split(' ');
  for (const at of [words.length - 1, 0]) {
    if (!number && words.length > 1 && isNumber(words[at] ?? '')) number = words.splice(at, 1)[0] ?? '';
  }
  return lineOf(number, words.join(' '), pieces);
}

const COUNT = /^(?:[x×]\s*)?\d{1,3}(?:\s*(?:x|×|off|pcs?\.?))?$/i;

/** Letters with at least three figures and nothing that parts words, or five figures and more. "M8" and "5/16" are sizes. */
function isNumber(text: string): boolean {
  const figures = text.replace(/\D/g, '').length;
  return /^[\w.\-/]+$/.test(text) ? (/[a-z]/i.test(text) && figures >= 3) || (/^[\d.\-/]+$/.test(text) && figures >= 5) : /^[A-Z]{1,5}[ -]\d{3,}[\w-]*$/.test(text);
}

function lineOf(number: string, name: string, pieces: number | null): ContentsLine {
  return { number: number.trim(), name: name.replace(/[\s,;:-]+$/, '').trim(), ...(pieces !== null && Number.isInteger(pieces) && pieces > 0 && { quantity: pieces }) };
}
