import { expect, test } from 'vitest';
import type { PartLine, RecordView } from '../../bridge/protocol';
import { EMPTY_RULE, readRule } from './rule-draft';
import { sidesOf } from './sides';

test('a rule names two things, and what it says of them', () => {
  expect(readRule({ ...EMPTY_RULE, subject: 'drum', other: 'hub' }, 'GBP')).toEqual({ changes: [{ of: 'drum' }, { relation: 'needs' }, { other: 'hub' }], errors: {} });
});

test('one quote stands for its part alone', () => {
  const { changes } = readRule({ ...EMPTY_RULE, subject: 'drum', subjectQuote: 'later', relation: 'rules-out', other: 'hub', otherQuote: 'exchange' }, 'GBP');
  expect(changes).toEqual([{ of: 'later' }, { relation: 'rules-out' }, { other: 'exchange' }]);
});

test('what goes with something has its price, the others have none', () => {
  const both = { ...EMPTY_RULE, subject: 'drum', other: 'hub', price: '12.50' };
  expect(readRule({ ...both, relation: 'goes-with' }, 'GBP').changes).toContainEqual({ cash: { minor: 1250, currency: 'GBP' } });
  expect(readRule(both, 'GBP').changes).toHaveLength(3);
  expect(readRule({ ...both, relation: 'goes-with', price: 'some' }, 'GBP').errors.price).toBeTruthy();
});

test('nothing, and a thing with itself, is refused at its field', () => {
  expect(Object.keys(readRule(EMPTY_RULE, 'GBP').errors)).toEqual(['subject', 'other']);
  expect(readRule({ ...EMPTY_RULE, subject: 'drum', other: 'drum' }, 'GBP').errors.other).toBeTruthy();
  // Two quotes of one part may rule one another out.
  expect(readRule({ ...EMPTY_RULE, subject: 'drum', other: 'drum', otherQuote: 'later' }, 'GBP').errors).toEqual({});
});

test('parts come by name with side and tag, then donors', () => {
  const part = (id: string, name: string, tag: number, side?: 'left'): PartLine => ({ id, name, tag, ...(side && { side }) }) as PartLine;
  const vehicle = (id: string, donor: boolean): RecordView => ({ id, struck: false, values: { name: 'The green one', donor } }) as RecordView;
  const sides = sidesOf([part('b', 'Hub', 12, 'left'), part('a', 'Drum', 9)], [vehicle('v', false), vehicle('d', true)]);
  expect(sides).toEqual([['a', 'Drum 0009'], ['b', 'Hub LEFT 0012'], ['d', 'Donor: The green one']]);
});
