import { expect, test } from 'vitest';
import { reallyCost } from './really-cost';

const pounds = (minor: number): { minor: number; currency: string } => ({ minor, currency: 'GBP' });

test('a donor costs what was paid less what its surplus brought', () => {
  expect(reallyCost({ cash: pounds(40_000), sold: pounds(26_050) })).toEqual(pounds(13_950));
  expect(reallyCost({ cash: pounds(40_000) })).toEqual(pounds(40_000));
  // More came back than was paid.
  expect(reallyCost({ cash: pounds(100), sold: pounds(300) })).toEqual(pounds(-200));
});

test('without a price, or with two currencies, nothing is told', () => {
  expect(reallyCost({ sold: pounds(100) })).toBeNull();
  expect(reallyCost({ cash: pounds(100), sold: { minor: 100, currency: 'EUR' } })).toBeNull();
});
