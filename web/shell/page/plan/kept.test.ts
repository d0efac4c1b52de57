import { expect, test } from 'vitest';
import type { KeptPart, KeptPlan, PlanChoice } from '../../bridge/protocol';
import { adoptCommands, adopting, keptQuotes } from './kept';
import { sinceSaid } from './since-said';

const pounds = (minor: number): { minor: number; currency: 'GBP' } => ({ minor, currency: 'GBP' });
const part = (name: string, more: Partial<KeptPart> = {}): KeptPart => ({ part: name, name, quote: `${name}-quote`, open: true, chosen: false, ...more });
const plan = (parts: KeptPart[], more = 0): KeptPlan => ({
  record: { id: 'p', kind: 'plan', struck: false, seen: {}, conflicts: [], values: {} }, kept: { hour_value: pounds(2000) }, parts, more: pounds(more),
  now: { cost: pounds(0), cash: pounds(0), own_time: 0, wait: 0, carriage: pounds(0), fits: true },
});

test('what a kit has too few of is kept after it, with the same part', () => {
  const choice: PlanChoice = { part: 'a', quote: 'kit', cash: 4800, rest: 'single', rest_cash: 900, name: '', route: 'kit', decided: false, chosen: false };
  expect(keptQuotes([choice])).toEqual([{ part: 'a', quote: 'kit', cash: 4800 }, { part: 'a', quote: 'single', cash: 900 }]);
});

test('adopting leaves what is chosen already, and what may not be chosen', () => {
  const kept = plan([part('a'), part('b', { chosen: true }), part('c', { open: false, since: 'quote-gone' })]);
  expect(adopting(kept).map(({ name }) => name)).toEqual(['a']);
  expect(adoptCommands(kept, () => 'new', 'Ada')).toEqual([{ do: 'choose', id: 'new', quote: 'a-quote', part: 'a', who: 'Ada' }]);
});

test('what changed is told with its parts, and what it comes to', () => {
  expect(sinceSaid(plan([part('Hub')]), pounds(2000))).toEqual(['Nothing has changed since.']);
  expect(sinceSaid(plan([part('Hub', { since: 'price', more: pounds(-200) })], -200), pounds(2000))).toEqual(['Now £2 less: Hub.']);
  const many = ['A', 'B', 'C', 'D'].map((name) => part(name, { since: 'later' }));
  expect(sinceSaid(plan(many), pounds(0))).toEqual(['Came later: A, B, C and 1 more.', 'Counted at the cheapest there is.', 'An hour counted £20 in it, and counts £0 now.']);
  expect(sinceSaid(plan([part('', { since: 'part-gone' })]), pounds(2000))).toEqual(['No longer in the job: a part that is not here.']);
});
