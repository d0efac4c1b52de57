import type { Change, Currency, FieldName, Values } from '../../bridge/protocol';
import { words } from '../words';
import { minorDigits } from '../words/format';
import { readHours, readMoney, readNumber } from '../words/read';

/** What a figure of a quote is measured in. */
export type FigureKind = 'money' | 'hours' | 'chance' | 'years' | 'days' | 'rate';

/** Every figure of a quote that is typed, with what it is measured in. */
export const FIGURES = {
  cash: 'money', cash_least: 'money', cash_most: 'money', freight: 'money', tax: 'money', duty: 'money', consumables: 'money', surcharge: 'money', withheld: 'chance',
  own_time: 'hours', own_time_least: 'hours', own_time_most: 'hours', chance: 'chance', chance_least: 'chance', chance_most: 'chance', strip_again: 'hours',
  life: 'years', life_least: 'years', life_most: 'years', wait: 'days', wait_least: 'days', wait_most: 'days', exchange_rate: 'rate',
} as const satisfies Partial<Record<FieldName, FigureKind>>;
export type Figure = keyof typeof FIGURES;
export const ALL_FIGURES = Object.keys(FIGURES) as Figure[];

/** A figure as it stands in the field. */
export function figureText(figure: Figure, values: Values): string {
  const value = values[figure];
  if (value === undefined) return '';
  if (typeof value === 'object') return String(value.minor / 10 ** minorDigits(value.currency));
  const plain = (number: number, digits: number): string => String(Number(number.toFixed(digits)));
  switch (FIGURES[figure]) {
    case 'hours': return hoursText(value, plain(value / 60, 2));
    case 'chance': return plain(value / 100, 2);
    case 'years': return yearsText(value, plain(value / 12, 2));
    case 'rate': return plain(value / 1_000_000, 6);
    default: return String(value);
  }
}

/** Hours as a fraction where that is exact, else with minutes. */
function hoursText(minutes: number, fraction: string): string {
  return readHours(fraction) === minutes ? fraction : `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

function yearsText(months: number, fraction: string): string {
  return Math.round(Number(fraction) * 12) === months ? fraction : String(months / 12);
}

/** What a field says: the change, or what is wrong with it. Empty clears. */
export function readFigure(figure: Figure, text: string, currency: Currency): Change | string {
  if (!text.trim()) return { clear: figure };
  const kind = FIGURES[figure];
  const value = kind === 'money' ? readMoney(text, currency) : kind === 'hours' ? readHours(text) : readPlain(kind, text);
  // The member is one of those above, and the value of its kind.
  return value === null ? words().costing.form.wrong[kind] : ({ [figure]: value } as unknown as Change);
}

function readPlain(kind: Exclude<FigureKind, 'money' | 'hours'>, text: string): number | null {
  const number = readNumber(text);
  if (number === null || number < 0) return null;
  switch (kind) {
    case 'chance': return number <= 100 ? Math.round(number * 100) : null;
    case 'years': return number > 0 && number <= 100 ? Math.max(1, Math.round(number * 12)) : null;
    case 'days': return Number.isInteger(number) && number <= 3650 ? number : null;
    case 'rate': return number > 0 && number <= 1_000_000 ? Math.round(number * 1_000_000) : null;
  }
}
