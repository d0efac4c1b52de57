import { expect, test } from 'vitest';
import type { CostView, Flip, QuoteCost, Route } from '../../bridge/protocol';
import { flipSaid, flipsInOrder } from './flip-said';

const currency = 'GBP';
const estimate = (minor: number) => ({ minor, currency });
const quote = (id: string, route: Route, present: number): QuoteCost => ({
  id, route, allowed: true, lines: [], expected: estimate(present), present: estimate(present), yearly: estimate(present / 10), renewals: 0, low: estimate(present), high: estimate(present),
  guessed: 0, peak: estimate(0), own_time: 120, chance: 0, strip_again: 0, guess: false, fails_into_nothing: false,
  record: { id, kind: 'quote', values: { own_time_certainty: 'about' }, struck: false, seen: {}, conflicts: [] },
});
const view = (flips: Flip[]): CostView => ({
  part: 'p', currency, hour_value: estimate(2000), interest: 0, years_kept: 10, quotes: [quote('a', 'repair-here', 9200), quote('b', 'buy', 10_600)], cheapest: 'a', open_with: [], flips, break_evens: [], kits: [], left: [], starting: [],
});

const hours: Flip = { input: 'own_time', quote: 'a', now: 120, at: 162, beyond: 'above', then: 'b' };
const price: Flip = { input: 'cash', quote: 'b', now: 10_600, at: 8733.3, beyond: 'below', then: 'b' };
const worth: Flip = { input: 'hour_value', now: 2000, at: 2589.5, beyond: 'above', then: 'b' };

test('the cheapest holds up to its hours', () => {
  const { lead, bold, now, certainty } = flipSaid(view([hours]), hours);
  expect(`${lead} ${bold}; ${now}`).toBe('Cheapest as long as repairing takes under 2.7\u00a0h; 2\u00a0h');
  expect(certainty).toBe('about');
});

test('another comes first below its price', () => {
  const { lead, bold } = flipSaid(view([price]), price);
  expect(`${lead} ${bold}`).toBe('Buy comes first if it costs under £87');
});

test('what is of the job is said of the cheapest', () => {
  const { lead, bold } = flipSaid(view([worth]), worth);
  expect(`${lead} ${bold}`).toBe('Cheapest as long as an hour of yours counts under £26');
});

test('what nobody said is not spoken of', () => {
  const freight: Flip = { input: 'freight', quote: 'a', now: 0, at: 1400, beyond: 'above', then: 'b' };
  expect(flipsInOrder(view([freight, hours]))).toEqual([hours]);
});

test('the figures of the cheapest come first, its hours before all', () => {
  expect(flipsInOrder(view([price, worth, hours]))).toEqual([hours, worth, price]);
});

test('each route is spoken of as what is done', () => {
  const dearer: Flip = { input: 'cash', quote: 'b', now: 9000, at: 12_000, beyond: 'above', then: 'a' };
  const lasting: Flip = { input: 'life', quote: 'b', now: 96, at: 60, beyond: 'below', then: 'a' };
  const bought: CostView = { ...view([dearer, lasting]), cheapest: 'b' };
  expect(flipSaid(bought, dearer).lead).toBe('Cheapest as long as buying costs');
  expect(flipSaid(bought, lasting).lead).toBe('Cheapest as long as it lasts');
});
