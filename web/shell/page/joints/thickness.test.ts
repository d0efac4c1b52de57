import { expect, test } from 'vitest';
import { readThickness, thickness } from './thickness.ts';

test('a thickness is read in the unit shown', () => {
  expect(readThickness('0.25', false)).toBe(250);
  expect(readThickness('0,1', false)).toBe(100);
  expect(readThickness('0.010', true)).toBe(254);
});

test('what is no thickness is not taken for one', () => {
  for (const text of ['', 'thin', '-1', '1e9', '60000']) expect(readThickness(text, false), text).toBeNull();
});

test('a thickness comes back as it was typed', () => {
  for (const text of ['0.25', '1', '0.005']) expect(thickness(readThickness(text, false) ?? -1, false, false)).toBe(text);
});
