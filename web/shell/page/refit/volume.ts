import type { Units } from '../../bridge/protocol';
import { speech } from '../words';
import { KEEP, number } from '../words/format';

/** Millilitres in a pint, quart and gallon: imperial and US, both exact by definition (4.54609 L; 231 cubic inches of 16.387064 ml). */
const IMPERIAL = { pt: 568.26125, qt: 1136.5225, gal: 4546.09 };
const US = { pt: 473.176473, qt: 946.352946, gal: 3785.411784 };
const METRIC: Record<string, number> = { l: 1000, ltr: 1000, litre: 1000, litres: 1000, liter: 1000, liters: 1000, ml: 1, cc: 1, cl: 10 };
const OTHERS: Record<string, 'pt' | 'qt' | 'gal'> = { pt: 'pt', pts: 'pt', pint: 'pt', pints: 'pt', qt: 'qt', qts: 'qt', quart: 'qt', quarts: 'qt', gal: 'gal', gals: 'gal', gallon: 'gal', gallons: 'gal' };

/** The unit that an amount has when none is typed: a British workshop that measures in inches fills pints, an American one quarts. */
export function volumeUnit(units: Units): 'L' | 'pt' | 'qt' {
  return units === 'metric' ? 'L' : speech() === 'american' ? 'qt' : 'pt';
}

/** What was typed, in millilitres; nothing where it is no amount. */
export function readVolume(text: string, units: Units): number | null {
  const found = /^(\d+(?:[.,]\d*)?|[.,]\d+)\s*([a-z]*)\.?$/.exec(text.trim().toLowerCase().replace(/\u00a0/g, ' '));
  if (!found) return null;
  const [, figure = '', typed = ''] = found;
  const size = sizeOf(typed || volumeUnit(units).toLowerCase());
  const millilitres = size === undefined ? NaN : Math.round(Number(figure.replace(',', '.')) * size);
  return Number.isFinite(millilitres) && millilitres <= 1_000_000 ? millilitres : null;
}

function sizeOf(unit: string): number | undefined {
  const other = OTHERS[unit];
  return other ? (speech() === 'american' ? US : IMPERIAL)[other] : METRIC[unit];
}

/** "4.5 L", "8 pt"; a little of it in millilitres. */
export function volumeWords(millilitres: number, units: Units): string {
  const unit = volumeUnit(units);
  if (unit === 'L' && millilitres < 1000) return `${number(millilitres)}${KEEP}ml`;
  return `${number(millilitres / (sizeOf(unit.toLowerCase()) ?? 1000), 2)}${KEEP}${unit}`;
}

/** As it would be typed again. */
export function volumeTyped(millilitres: number, units: Units): string {
  const unit = volumeUnit(units);
  return `${Number((millilitres / (sizeOf(unit.toLowerCase()) ?? 1000)).toFixed(3))} ${unit}`;
}
