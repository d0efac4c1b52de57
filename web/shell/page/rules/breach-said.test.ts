import { expect, test } from 'vitest';
import type { BreachView, MendChoice, RuleLine } from '../../bridge/protocol';
import { breachSaid } from './breach-said';

const pounds = (minor: number): { minor: number; currency: string } => ({ minor, currency: 'GBP' });
const choice: MendChoice = { part: 'hub', tag: 62, name: 'Hub', quote: 'q', route: 'donor', from: 'the green one' };
const rule = (breach: BreachView, relation: 'needs' | 'goes-with' = 'needs'): RuleLine =>
  ({ subject: 'later drums', other: 'Hub', record: { id: 'r', kind: 'rule', struck: false, seen: {}, conflicts: [], values: { relation } }, breach });
const broken = (more: number): BreachView => ({ why: 'nothing-chosen', parts: ['drum', 'hub'], mend: { choices: [choice], more: pounds(more) } });

test('a breach says what stands against the rule and what mends it for how much', () => {
  expect(breachSaid(rule(broken(1240)))).toEqual({
    against: 'Nothing is chosen for Hub yet.', mend: 'Cheapest mend: Donor, the green one for Hub, £12.40 more.', chooses: 'Donor, the green one for Hub',
  });
  expect(breachSaid(rule(broken(-300)))?.mend).toContain('£3 less');
  expect(breachSaid(rule(broken(0.2)))?.mend).toContain('for the same money');
  expect(breachSaid(rule({ ...broken(0), why: 'other-chosen', instead: 'use-again' }))?.against).toBe('For Hub something else is chosen: use again.');
});

test('what need not hold is weighed against what it costs as it is', () => {
  const soft = (more: number): BreachView => ({ ...broken(more), price: pounds(1500) });
  expect(breachSaid(rule(soft(500), 'goes-with'))).toMatchObject({ against: 'Nothing is chosen for Hub yet. It costs £15 extra as it is.', mend: 'To leave it so is cheapest. Otherwise: Donor, the green one for Hub, £5 more.' });
  expect(breachSaid(rule(soft(-300), 'goes-with'))?.mend).toMatch(/^Cheapest mend/);
});

test('a rule that holds says nothing; one that nothing mends says so', () => {
  const { mend: _, ...bare } = broken(0);
  expect(breachSaid(rule(bare))).toMatchObject({ mend: 'Nothing that is quoted mends it: enter another quote.', chooses: '' });
  const { breach: __, ...held } = rule(bare);
  expect(breachSaid(held)).toBeNull();
});
