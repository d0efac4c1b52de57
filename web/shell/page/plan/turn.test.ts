import { expect, test } from 'vitest';
import type { Settings } from '../../bridge/protocol';
import { slid, turnedQuery } from './turn';

const settings = { budget: { minor: 120_000, currency: 'GBP' }, hour_value: { minor: 2000, currency: 'GBP' } } as Settings;

test('what is not turned is as the job says', () => {
  expect(turnedQuery({})).toEqual({});
  expect(turnedQuery({ without: [] })).toEqual({});
  expect(turnedQuery({ budget: 0, hourValue: 1500, without: ['a'] })).toEqual({ budget: 0, forbid: ['a'], set: { quotes: {}, job: { hour_value: 1500 } } });
});

test('a slider reaches beyond what is set, in round steps', () => {
  expect(slid('budget', settings, undefined)).toEqual({ now: 120_000, most: 180_000, step: 2000 });
  expect(slid('hourValue', settings, undefined)).toEqual({ now: 2000, most: 3000, step: 50 });
  const { now, most, step } = slid('minutes', settings, undefined);
  expect([now, most % step, step]).toEqual([0, 0, 30]);
});
