import type { Dimension, Unit, Units } from '../../bridge/protocol';
import { KEEP, number } from '../words/format';

/** The unit that figures have when none is typed. */
export function unitOf(dimension: Dimension, units: Units): Unit {
  switch (dimension) {
    case 'length': return units === 'inch' ? 'inch' : 'millimetre';
    case 'force': return units === 'inch' ? 'pound-force' : 'newton';
    case 'number': return 'one';
  }
}

/** By unit: base units in it, its sign, how many decimals are told, and how many tell neighbouring base units apart. */
const SIZE: Partial<Record<Unit, readonly [base: number, sign: string, digits: number, exact: number]>> = {
  millimetre: [1e6, 'mm', 4, 6], inch: [25.4e6, 'in', 5, 8], newton: [1e3, 'N', 1, 3], 'pound-force': [4448.2216152605, 'lbf', 1, 4], one: [1, '', 0, 0],
};

/** The sign of that unit. */
export function sign(dimension: Dimension, units: Units): string {
  return SIZE[unitOf(dimension, units)]?.[1] ?? '';
}

/** An amount in base units as figures, without its unit. */
export function figures(amount: number, dimension: Dimension, units: Units, digits?: number): string {
  const [base, , most] = SIZE[unitOf(dimension, units)] ?? [1, '', 4];
  return number(amount / base, digits ?? most);
}

/** An amount as somebody would type it, so that reading it gives the same amount again: every decimal, thousands not set apart. */
export function asTyped(amount: number, dimension: Dimension, units: Units): string {
  const [base, , , exact] = SIZE[unitOf(dimension, units)] ?? [1, '', 4, 6];
  const text = (amount / base).toFixed(exact);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** With its unit. */
export function said(amount: number, dimension: Dimension, units: Units): string {
  const unit = sign(dimension, units);
  return unit ? `${figures(amount, dimension, units)}${KEEP}${unit}` : figures(amount, dimension, units);
}
