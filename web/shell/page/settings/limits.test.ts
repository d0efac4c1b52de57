import { expect, test } from 'vitest';
import { hoursText, readLimit } from './limits';

test('limits are read as people write them, and emptied', () => {
  expect(readLimit('budget', '£1,900', 'GBP')).toEqual({ budget: { minor: 190_000, currency: 'GBP' } });
  expect(readLimit('own_hours', '7.5', 'GBP')).toEqual({ own_hours: 450 });
  expect(readLimit('latest', '2027-04-01', 'GBP')).toEqual({ latest: '2027-04-01' });
  for (const limit of ['budget', 'own_hours', 'latest'] as const) expect(readLimit(limit, ' ', 'GBP')).toEqual({ clear: limit });
});

test('what cannot be meant is refused', () => {
  for (const limit of ['budget', 'own_hours', 'latest'] as const) expect(typeof readLimit(limit, 'plenty', 'GBP')).toBe('string');
});

test('hours that were put down are opened again as they were', () => {
  for (const minutes of [0, 450, 2400, 100, 7]) expect(readLimit('own_hours', hoursText(minutes), 'GBP')).toEqual({ own_hours: minutes });
});
