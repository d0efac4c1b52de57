import { expect, test } from 'vitest';
import { money } from './format';
import { readHours, readMoney, readNumber } from './read';

test('money is read by its digits', () => {
  const minor = (text: string, currency = 'GBP'): number | undefined => readMoney(text, currency)?.minor;
  expect(['18', '£18.5', '18.35', '1,980', '1,980.05', '18,50', ' £ 7 ', '0', '18.'].map((text) => minor(text))).toEqual([1800, 1850, 1835, 198_000, 198_005, 1850, 700, 0, 1800]);
  expect(['', 'free', '-3', '1.234', '1.2.3', '12 or 13', '.'].map((text) => minor(text))).toEqual(Array(7).fill(undefined));
  expect(minor('1500', 'JPY')).toBe(1500);
  expect(minor('15.5', 'JPY')).toBeUndefined();
});

test('what is shown can be typed back', () => {
  for (const minor of [0, 1, 99, 100, 101, 1835, 198_000, 123_456_789]) {
    expect(readMoney(money({ minor, currency: 'GBP' }), 'GBP')).toEqual({ minor, currency: 'GBP' });
  }
});

test('hours are read as people write them', () => {
  expect(['2', '2.5', '2,5 h', '2:15', '2 h 15', '2h15min', '45 min', '.5', '0.75 hours'].map(readHours)).toEqual([120, 150, 150, 135, 135, 135, 45, 30, 45]);
  expect(['', 'two', '2:75', '-1', '2.5.1'].map(readHours)).toEqual([null, null, null, null, null]);
});

test('figures take a point or a comma', () => {
  expect(['31.724', '31,724', '-0.5', '.5', ''].map(readNumber)).toEqual([31.724, 31.724, -0.5, 0.5, null]);
});
