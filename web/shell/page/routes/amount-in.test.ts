import { expect, test } from 'vitest';
import { amountIn } from './amount-in';

test('an amount is told in what the rate is for one of', () => {
  expect(amountIn({ amount: 375_000, basis: 'square-decimetre' })).toBe(37.5);
  expect(amountIn({ amount: 9_800, basis: 'kilogram' })).toBe(9.8);
  expect(amountIn({ amount: 64_516, basis: 'square-inch' })).toBeCloseTo(100, 9);
  expect(amountIn({ amount: 12, basis: 'piece' })).toBe(12);
});
