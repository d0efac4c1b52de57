// Terms of suppliers out of a spreadsheet: the first row names the columns, each further row is one of them.

import Papa from 'papaparse';
import type { Change, Currency, RecordView, SupplierLine, Values } from '../../bridge/protocol';
import { words } from '../words';
import { readTerm, type Term } from './terms';

/** A row that was read: whom it is about, what it says, and what of it cannot be read. */
export interface TermsRow {
  name: string;
  /** The one that is here already under this name. */
  known: RecordView | undefined;
  changes: readonly Change[];
  /** The names of the columns whose cell cannot be read, each with why. */
  wrong: readonly { column: string; why: string }[];
}

export interface TermsTable {
  rows: readonly TermsRow[];
  /** Heads that name no term. */
  unread: readonly string[];
  /** No column is the name. */
  nameless: boolean;
}

/** Words that heads of columns begin with, in the order in which they are tried. */
const HEADS: readonly (readonly [Term | 'name', RegExp])[] = [
  ['free_from', /free|threshold/], ['minimum_order', /(min|least).*order/], ['minimum_charge', /(min|least).*(charge|batch)|^minimum$/], ['surcharge_deadline', /old unit|surcharge|core/],
  ['restocking', /restock|kept when/], ['return_window', /return|go back|send.*back/], ['warranty', /warrant|guarantee/], ['back_order', /back.?order|not on the shelf|out of stock/],
  ['wait_least', /(wait|lead|turnaround).*(least|min)/], ['wait_most', /(wait|lead|turnaround).*(most|max)/], ['wait', /wait|lead|turnaround|days/], ['duty_rate', /duty/], ['tax_rate', /tax|vat|gst/],
  ['shipping', /shipping|carriage|postage|freight|delivery/], ['name', /name|supplier|specialist|shop|seller|who/],
];

/** Reads what was pasted. A row about somebody who is here already changes that one; a name that comes twice goes to its first row. */
export function readTerms(text: string, known: readonly SupplierLine[], currency: Currency): TermsTable {
  const { data } = Papa.parse<string[]>(text.trim(), { skipEmptyLines: 'greedy', delimitersToGuess: ['\t', ';', ','] });
  const [heads = [], ...rows] = data.map((row) => row.map((cell) => cell.trim()));
  const columns = columnsOf(heads);
  const at = columns.indexOf('name');
  const found = new Map(known.map(({ record }) => [called(record.values.name ?? ''), record]));
  const seen = new Set<string>();
  const read = rows.flatMap((row): TermsRow[] => {
    const name = row[at] ?? '';
    if (!name || seen.has(called(name))) return [];
    seen.add(called(name));
    const record = found.get(called(name));
    const [changes, wrong]: [Change[], { column: string; why: string }[]] = [[], []];
    const values: Values = { ...record?.values };
    columns.forEach((column, cell) => {
      const typed = row[cell] ?? '';
      if (!column || column === 'name' || !typed) return;
      const change = readTerm(column, bare(typed), currency, values);
      if (typeof change === 'string') wrong.push({ column: words().suppliers.terms[column], why: change });
      else {
        changes.push(change);
        Object.assign(values, change);
      }
    });
    return [{ name, known: record, changes, wrong }];
  });
  return { rows: at < 0 ? [] : read, unread: heads.filter((head, cell) => head && !columns[cell]), nameless: at < 0 };
}

function columnsOf(heads: readonly string[]): (Term | 'name' | '')[] {
  const taken = new Set<string>();
  return heads.map((head) => {
    const found = HEADS.find(([column, pattern]) => !taken.has(column) && pattern.test(head.toLowerCase()))?.[0];
    if (found) taken.add(found);
    return found ?? '';
  });
}

/** The figure without what stands beside it in a table. */
function bare(cell: string): string {
  return cell.replace(/\p{Sc}|%|\b(days?|months?|weeks?|GBP|EUR|USD)\b/giu, '').trim();
}

/** A name as it is compared: capitals and spaces aside. */
const called = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
