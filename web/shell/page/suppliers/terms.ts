import type { Change, Currency, FieldName, Values } from '../../bridge/protocol';
import { words } from '../words';
import { count, minorDigits, money, number } from '../words/format';
import { readMoney, readNumber } from '../words/read';

/** What a term is measured in: `times` of 100, `share` of a price. */
export type TermKind = 'money' | 'days' | 'times' | 'share' | 'months';

/** Every term of a supplier that is typed, with what it is measured in. */
export const TERMS = {
  shipping: 'money', free_from: 'money', minimum_order: 'money', minimum_charge: 'money',
  wait: 'days', wait_least: 'days', wait_most: 'days', back_order: 'times',
  return_window: 'days', restocking: 'share', surcharge_deadline: 'days', warranty: 'months', tax_rate: 'share', duty_rate: 'share',
} as const satisfies Partial<Record<FieldName, TermKind>>;
export type Term = keyof typeof TERMS;

/** A term as it is typed again. */
export function termText(term: Term, values: Values): string {
  const value = values[term];
  if (value === undefined) return '';
  if (typeof value === 'object') return String(value.minor / 10 ** minorDigits(value.currency));
  const kind = TERMS[term];
  return kind === 'times' || kind === 'share' ? String(Number((value / 100).toFixed(2))) : String(value);
}

/** A term in words; empty while nothing was said. */
export function termSaid(term: Term, values: Values): string {
  const say = words().suppliers;
  const value = values[term];
  if (value === undefined) return '';
  if (typeof value === 'object') return money(value);
  switch (TERMS[term]) {
    case 'times': return say.times(number(value / 100, 2));
    case 'share': return say.percent(number(value / 100, 2));
    case 'months': return count(value, 'month');
    default: return count(value, 'day');
  }
}

/** What a field says: the change, or what is wrong with it. Empty clears. `values`: what stands beside it. */
export function readTerm(term: Term, text: string, currency: Currency, values: Values): Change | string {
  const wrong = words().suppliers.wrong;
  if (!text.trim()) return { clear: term };
  const kind = TERMS[term];
  const value = kind === 'money' ? readMoney(text, currency) : readPlain(kind, text);
  if (value === null) return wrong[kind];
  // The member is one of those above, and the value of its kind.
  return (typeof value === 'number' && crossed(term, value, values)) || ({ [term]: value } as unknown as Change);
}

function readPlain(kind: Exclude<TermKind, 'money'>, text: string): number | null {
  const figure = readNumber(text);
  if (figure === null || figure < 0) return null;
  switch (kind) {
    case 'days': return Number.isInteger(figure) && figure <= 3650 ? figure : null;
    case 'months': return Number.isInteger(figure) && figure >= 1 && figure <= 1200 ? figure : null;
    default: return figure <= 100 ? Math.round(figure * 100) : null;
  }
}

/** Least and most stand around the usual wait: what does not would be passed over in silence. */
function crossed(term: Term, value: number, { wait, wait_least, wait_most }: Values): string {
  if (term !== 'wait' && term !== 'wait_least' && term !== 'wait_most') return '';
  const { wrong } = words().suppliers;
  const all = { wait, wait_least, wait_most, [term]: value };
  const above = (one: number | undefined, other: number | undefined): boolean => one !== undefined && other !== undefined && one > other;
  if (above(all.wait_least, all.wait_most)) return wrong.crossed;
  if (above(all.wait_least, all.wait)) return wrong.leastAbove;
  return above(all.wait, all.wait_most) ? wrong.mostBelow : '';
}
