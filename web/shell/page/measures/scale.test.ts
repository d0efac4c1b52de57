import { expect, test } from 'vitest';
import { scaleOf } from './scale';

test('everything lies on the line, in order', () => {
  const { at, ticks } = scaleOf([31.715e6, 31.72e6, 31.733e6], 320, 1e6);
  expect(at(31.715e6)).toBeGreaterThan(0);
  expect(at(31.733e6)).toBeLessThan(320);
  expect(at(31.72e6)).toBeGreaterThan(at(31.715e6));
  expect(ticks.map((tick) => Math.round(tick / 1e4) / 100)).toEqual([31.71, 31.72, 31.73]);
});

test('one figure alone has a line too', () => {
  const { at, ticks } = scaleOf([2e6], 300, 1e6);
  expect(at(2e6)).toBeCloseTo(150);
  expect(ticks.length).toBeGreaterThan(1);
});
