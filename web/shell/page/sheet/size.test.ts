import { expect, test } from 'vitest';
import { readSize, sizeText } from './size';

test('a size is three sides', () => {
  expect(readSize('280 × 280 × 150', 'metric')).toEqual([280_000_000, 280_000_000, 150_000_000]);
  expect(readSize('11x11 X 6', 'inch')).toEqual([279_400_000, 279_400_000, 152_400_000]);
  expect(readSize('1.5*2*3', 'metric')).toEqual([1_500_000, 2_000_000, 3_000_000]);
  for (const wrong of ['', '280', '280 × 280', '1×2×3×4', '0 × 1 × 2', 'a × b × c']) expect(readSize(wrong, 'metric'), wrong).toBeNull();
});

test('it is typed again as it stands', () => {
  expect(readSize(sizeText([279_400_000, 25_400_000, 152_400_000], 'inch'), 'inch')).toEqual([279_400_000, 25_400_000, 152_400_000]);
});

// Break: set the thousands apart.
test('what is a metre or more is typed again as it stands, too', () => {
  expect(sizeText([1_200_000_000, 280_000_000, 150_500_000], 'metric')).toBe('1200 × 280 × 150.5');
  expect(readSize(sizeText([1_200_000_000, 12_345_600_000, 1_000_000_000], 'metric'), 'metric')).toEqual([1_200_000_000, 12_345_600_000, 1_000_000_000]);
  expect(readSize(sizeText([25_654_000_000, 25_400_000, 25_400_000], 'inch'), 'inch')).toEqual([25_654_000_000, 25_400_000, 25_400_000]);
});
