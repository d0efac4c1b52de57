import type { Mass, Units } from '../../bridge/protocol';

// Exact by definition: international pound, 1959.
const GRAMS_A_POUND = 453.592_37;

const gramsIn = (units: Units): number => (units === 'inch' ? GRAMS_A_POUND : 1000);

export function massUnit(units: Units): string {
  return units === 'inch' ? 'lb' : 'kg';
}

/** A mass as typed, in the unit of the setting; grams are kept whole. */
export function massInUnit(figure: number, units: Units): Mass {
  return Math.round(figure * gramsIn(units));
}

/** A mass as it is typed again: no more digits than a gram gives. */
export function massText(grams: Mass, units: Units): string {
  return String(Number((grams / gramsIn(units)).toFixed(3)));
}
