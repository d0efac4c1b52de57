import { expect, test } from 'vitest';
import { TORQUE_UNITS, torqueFigure, torqueTyped } from './torque.ts';

test('a figure stands in the unit it was read in', () => {
  expect(torqueFigure(54_000_000, 'newton-metre')).toBe('54');
  // 40 lbf·ft as the core keeps it: rounded to a micronewton-metre.
  expect(torqueFigure(54_232_718, 'pound-foot')).toBe('40');
  expect(torqueFigure(11_298_483, 'pound-inch')).toBe('100');
  expect(torqueFigure(53_936_575, 'kilogram-metre')).toBe('5.5');
});

test('what is typed again is what was kept', () => {
  for (const unit of TORQUE_UNITS) expect(Number(torqueTyped(54_232_718, unit))).toBeCloseTo(Number(torqueFigure(54_232_718, unit)), 10);
  expect(torqueTyped(1_250_000_000, 'newton-metre')).toBe('1250');
});
