import { afterEach, expect, test } from 'vitest';
import { bytes, bytesOf, count, day, hours, hoursDecimal, length, money, moneyRound, number, ofHundred } from './format';
import { setSpeech } from './speech';

const plain = (text: string): string => text.replace(/\u00a0/g, '~');
afterEach(() => { setSpeech('british'); });

test('money shows pence only where there are some, and stays exact', () => {
  expect(money({ minor: 198_000, currency: 'GBP' })).toBe('£1,980');
  expect(money({ minor: 1835, currency: 'GBP' })).toBe('£18.35');
  expect(money({ minor: -5800, currency: 'GBP' })).toBe('\u2212£58');
  expect(money({ minor: 1500, currency: 'JPY' })).toBe('¥1,500');
  expect(moneyRound({ minor: 9183, currency: 'GBP' })).toBe('£92');
});

test('hours keep figure and unit together', () => {
  expect(plain(hours(135))).toBe('2~h 15~min');
  expect(plain(hours(180))).toBe('3~h');
  expect(plain(hours(45))).toBe('45~min');
  expect(plain(hours(59.7))).toBe('1~h');
  expect(plain(hoursDecimal(160))).toBe('2.7~h');
});

test('days follow the vocabulary', () => {
  const at = new Date(2026, 10, 16, 20, 14);
  expect(plain(day(at))).toBe('16~Nov');
  setSpeech('american');
  expect(plain(day(at))).toBe('Nov~16');
});

test('room, chances and counts', () => {
  expect([0, 999, 999_500, 1_440_000_000, 11_200_000_000].map((n) => plain(bytes(n)))).toEqual(['0~B', '999~B', '1~MB', '1.4~GB', '11.2~GB']);
  expect(plain(bytesOf(1_440_000_000, 11_200_000_000))).toBe('1.4 of 11.2~GB');
  expect(plain(bytesOf(14_000_000, 11_200_000_000))).toBe('14~MB of 11.2~GB');
  expect(plain(ofHundred(0.806))).toBe('81 of~100');
  expect([1, 2].map((n) => plain(count(n, 'photo')))).toEqual(['1~photo', '2~photos']);
  expect(number(-1234.56, 1)).toBe('\u22121,234.6');
  expect(length(11)).toBe('0:11');
});
