import { expect, test } from 'vitest';
import { dayNear, when } from './when';

const NOW = new Date(2024, 2, 10, 12, 0);
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

test('the hour of today, the day of this year', () => {
  expect(plain(when(new Date(2024, 2, 10, 8, 14).getTime(), NOW))).toBe('8:14');
  expect(plain(when(new Date(2024, 2, 9, 23, 59).getTime(), NOW))).toBe('9 Mar');
});

// Catches: "last seen 2 Oct" of what nobody has seen for two years.
test('another year is said with it', () => {
  expect(plain(when(new Date(2022, 9, 2).getTime(), NOW))).toBe('2 Oct 2022');
  expect(plain(when(new Date(2023, 2, 10, 12, 0).getTime(), NOW))).toBe('10 Mar 2023');
  expect(plain(dayNear(new Date(2025, 0, 1), NOW))).toBe('1 Jan 2025');
  expect(plain(dayNear(new Date(2024, 11, 31), NOW))).toBe('31 Dec');
});
