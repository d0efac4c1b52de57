import type { Torque, TorqueUnit, Unit, Units } from '../../bridge/protocol';
import { number } from '../words/format';

/** By unit: micronewton-metres in it, exact by definition, and its sign. */
const SIZE: Record<TorqueUnit, readonly [base: number, sign: string]> = {
  'newton-metre': [1e6, 'N·m'], 'pound-foot': [1_355_817.9483314004, 'lbf·ft'], 'pound-inch': [112_984.8290276167, 'lbf·in'], 'kilogram-metre': [9_806_650, 'kgf·m'],
};

export const TORQUE_UNITS: readonly TorqueUnit[] = ['newton-metre', 'pound-foot', 'pound-inch', 'kilogram-metre'];

/** The unit that a figure has when none is typed. */
export function torqueUnit(units: Units): TorqueUnit {
  return units === 'inch' ? 'pound-foot' : 'newton-metre';
}

export function torqueSign(unit: TorqueUnit): string {
  return SIZE[unit][1];
}

/** The figure in the unit it was read in, without its sign; the second decimal is finer than any wrench. */
export function torqueFigure(torque: Torque, unit: TorqueUnit): string {
  return number(torque / SIZE[unit][0], 2);
}

/** As somebody would type it: thousands not set apart. */
export function torqueTyped(torque: Torque, unit: TorqueUnit): string {
  return String(Number((torque / SIZE[unit][0]).toFixed(2)));
}

/** Whether a unit that was typed is one of tightening. */
export function isTorqueUnit(unit: Unit | undefined): unit is TorqueUnit {
  return unit !== undefined && unit in SIZE;
}
