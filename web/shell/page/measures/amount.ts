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

const SIZE: Partial<Record<Unit, readonly [base: number, sign: string, digits: number]>> = {
  millimetre: [1e6, 'mm', 4], inch: [25.4e6, 'in', 5], newton: [1e3, 'N', 1], 'pound-force': [4448.2216152605, 'lbf', 1], one: [1, '', 0],
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

/** With its unit. */
export function said(amount: number, dimension: Dimension, units: Units): string {
  const unit = sign(dimension, units);
  return unit ? `${figures(amount, dimension, units)}${KEEP}${unit}` : figures(amount, dimension, units);
}
