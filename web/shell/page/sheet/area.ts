import type { Area, Units } from '../../bridge/protocol';

// Exact by definition: international yard, 1959.
const SQUARE_MILLIMETRES_AN_INCH = 645.16;

const inUnit = (units: Units): number => (units === 'inch' ? SQUARE_MILLIMETRES_AN_INCH : 10_000);

export function areaUnit(units: Units): string {
  return units === 'inch' ? 'sq in' : 'dm²';
}

/** An area as typed, in the unit of the setting; square millimetres are kept whole. */
export function areaInUnit(figure: number, units: Units): Area {
  return Math.round(figure * inUnit(units));
}

/** An area as it is typed again: no more digits than a square millimetre gives. */
export function areaText(area: Area, units: Units): string {
  return String(Number((area / inUnit(units)).toFixed(units === 'inch' ? 2 : 4)));
}
