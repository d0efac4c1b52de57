import { expect, test } from 'vitest';
import type { PlanOrder, PlanView, Settings } from '../../bridge/protocol';
import { slid, span, stagesOf, turnedQuery } from './turn';

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

test('stages have budgets of their own once there are several', () => {
  const sum = (minor: number): PlanOrder['value'] => ({ minor, currency: 'GBP' });
  const order = (stage: number, value: number): PlanOrder => ({ supplier: 'a', name: '', stage, quotes: [], value: sum(value), mass: 0, carriage: sum(500), short: sum(0) });
  const view = (orders: PlanOrder[]): PlanView => ({ orders }) as unknown as PlanView;
  expect([...stagesOf(view([order(1, 4000), order(1, 500)]))]).toEqual([]);
  expect([...stagesOf(view([order(1, 4000), order(2, 9500)]))]).toEqual([[1, 4500], [2, 10_000]]);
  expect(span(10_000)).toEqual({ most: 15_000, step: 200 });
  expect(turnedQuery({ stages: { 2: 8000 } })).toEqual({ stages: [{ stage: 2, budget: 8000 }] });
});
