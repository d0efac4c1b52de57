import type { Units } from '../../bridge/protocol';
import { readNumber } from '../words/read';

const NANOMETRES = { metric: 1_000_000, inch: 25_400_000 } as const;

export type Size = readonly [long: number, wide: number, high: number];

export function lengthUnit(units: Units): 'mm' | 'in' {
  return units === 'inch' ? 'in' : 'mm';
}

/** "280 × 280 × 150" in the unit of the setting, as nanometres; nothing when it is no size. */
export function readSize(text: string, units: Units): Size | null {
  const figures = text.split(/[×xX*]/u).map((one) => readNumber(one.trim()));
  const [long, wide, high, ...more] = figures.map((figure) => (figure === null || figure <= 0 ? null : Math.round(figure * NANOMETRES[units])));
  return more.length > 0 || !long || !wide || !high ? null : [long, wide, high];
}

/** The same as it is typed again: thousands not set apart, which would be read as a decimal. */
export function sizeText(size: Size, units: Units): string {
  return size.map((side) => String(Number((side / NANOMETRES[units]).toFixed(units === 'inch' ? 3 : 1)))).join(' × ');
}
