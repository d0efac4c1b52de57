import { expect, test } from 'vitest';
import type { PlanChoice } from '../../bridge/protocol';
import { differing } from './differing';

const choice = (part: string, quote: string): PlanChoice => ({ part, quote, name: '', route: 'buy', decided: false, chosen: false, cash: 0 });

test('parts with another quote, and parts that one plan alone has', () => {
  const told = differing([choice('a', '1'), choice('b', '2'), choice('c', '3')], [choice('b', '9'), choice('a', '1'), choice('d', '4')]);
  expect(told.map(({ one, other }) => [one?.quote, other?.quote])).toEqual([['2', '9'], ['3', undefined], [undefined, '4']]);
});
