import { expect, test } from 'vitest';
import { fitted, isDue, readRemind, USUAL } from './due';

const DAY = 86_400_000;
const now = 1_800_000_000_000;
const kept = { persisted: true, usage: 0, quota: 0, entries: 9, private_window: false };

test('due after so many photos or days, and never when nothing came since', () => {
  expect(isDue(USUAL, { ...kept, photos: 90, handed_out: now - DAY, photos_since: 50 }, now)).toBe(true);
  expect(isDue(USUAL, { ...kept, photos: 90, handed_out: now - DAY, photos_since: 49 }, now)).toBe(false);
  expect(isDue(USUAL, { ...kept, photos: 90, handed_out: now - 7 * DAY, photos_since: 1 }, now)).toBe(true);
  expect(isDue(USUAL, { ...kept, photos: 90, handed_out: now - 70 * DAY, photos_since: 0 }, now)).toBe(false);
  expect(isDue(USUAL, { ...kept, photos: 50, handed_out: null, photos_since: 50 }, now)).toBe(true);
});

test('without the promise it comes at half', () => {
  expect(fitted({ photos: 50, days: 7 }, { persisted: false, private_window: false })).toEqual({ photos: 25, days: 4 });
  expect(fitted({ photos: 1, days: 1 }, { persisted: null, private_window: false })).toEqual({ photos: 1, days: 1 });
});

test('what was set is read; what makes no sense is the usual', () => {
  expect(readRemind('20,3')).toEqual({ photos: 20, days: 3 });
  for (const bad of [null, '', 'a,b', '0,3', '2.5,3']) expect(readRemind(bad)).toEqual(USUAL);
});
