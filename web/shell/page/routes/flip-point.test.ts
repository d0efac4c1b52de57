import { expect, test } from 'vitest';
import type { CostView, QuoteCost, Route } from '../../bridge/protocol';
import { flipPoint } from './flip-point';

const currency = 'GBP';
const quote = (id: string, route: Route, expected: number, own_time: number): QuoteCost => ({
  id, route, allowed: true, lines: [], expected: { minor: expected, currency }, own_time, chance: 0, strip_again: 0, guess: false, fails_into_nothing: false,
  record: { id, kind: 'quote', values: {}, struck: false, seen: {}, conflicts: [] },
});
const view = (cheapest: string, quotes: QuoteCost[], break_evens: CostView['break_evens']): CostView => ({
  part: 'p', currency, hour_value: { minor: 2000, currency }, quotes, cheapest, break_evens,
});

// 92 with 2 h at 20 an hour: at 2.7 h it is 106, what buying costs.
const repair = quote('a', 'repair-here', 9200, 120);
const buy = quote('b', 'buy', 10600, 0);
const flip = { quote: 'a', against: 'b', hours: 2.7 };

test('the bench is cheapest below the hours at which buying costs the same', () => {
  expect(flipPoint(view('a', [repair, buy], [flip]))).toMatchObject({ hours: 2.7, says: 'cheapest' });
});

test('the first of several flips counts', () => {
  const donor = quote('c', 'donor', 11_000, 0);
  expect(flipPoint(view('a', [repair, buy, donor], [{ quote: 'a', against: 'c', hours: 2.9 }, flip]))).toMatchObject({ hours: 2.7, against: { id: 'b' } });
});

test('another bench route that would be cheaper before the flip: only the pair is spoken of', () => {
  expect(flipPoint(view('a', [repair, buy, quote('c', 'send-out', 10_000, 30)], [flip]))?.says).toBe('cheaper');
  expect(flipPoint(view('a', [repair, buy, quote('c', 'send-out', 10_600, 30)], [flip]))?.says).toBe('cheapest');
});

test('buying is cheapest: what the bench would have to do it in', () => {
  const slow = quote('a', 'repair-here', 15_200, 300);
  expect(flipPoint(view('b', [slow, buy], [flip]))).toMatchObject({ says: 'would-be', bench: { id: 'a' }, hours: 2.7 });
});

test('where hours do not decide nothing is said', () => {
  expect(flipPoint(view('a', [repair, buy], []))).toBeNull();
});
