import { expect, test } from 'vitest';
import { areaInUnit, areaText } from './area';

test('an area is kept to the square millimetre and comes back as it was typed', () => {
  expect(areaInUnit(12.5, 'metric')).toBe(125_000);
  expect(areaInUnit(1, 'inch')).toBe(645);
  for (const typed of [0.5, 12.5, 310.0125]) expect(areaText(areaInUnit(typed, 'metric'), 'metric')).toBe(String(typed));
  for (const typed of [1, 12.25, 310]) expect(areaText(areaInUnit(typed, 'inch'), 'inch')).toBe(String(typed));
});
