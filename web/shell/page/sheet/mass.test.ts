import { expect, test } from 'vitest';
import { massInUnit, massText } from './mass';

test('a mass is kept to the gram and comes back as it was typed', () => {
  expect(massInUnit(2.45, 'metric')).toBe(2450);
  expect(massInUnit(1, 'inch')).toBe(454);
  for (const typed of [0.5, 2.45, 15, 120.125]) expect(massText(massInUnit(typed, 'metric'), 'metric')).toBe(String(typed));
});
