import { expect, test } from 'vitest';
import type { RecordView, Values } from '../../bridge/protocol';
import { draftOf, readDelivery } from './delivery-draft.ts';

const record = (values: Values): RecordView => ({ id: 'a', kind: 'delivery', values, struck: false, seen: {}, conflicts: [] });

test('as many as are wanted are ordered, unless somebody says otherwise', () => {
  const draft = draftOf(undefined, 2);
  expect(readDelivery({ ...draft, due: '2026-03-14' }, undefined, '2026-03-01')).toEqual([{ quantity: 2 }, { due: '2026-03-14' }]);
});

test('here already: the day is today where none is said', () => {
  expect(readDelivery({ ...draftOf(undefined, 1), from: ' Hare & Wick ', here: 'yes' }, undefined, '2026-03-01')).toEqual([{ quantity: 1 }, { from: 'Hare & Wick' }, { arrived: '2026-03-01' }]);
});

test('what is put down unchanged writes nothing; what is emptied is cleared', () => {
  const one = record({ quantity: 3, from: 'Anvil Row', due: '2026-03-14' });
  expect(readDelivery(draftOf(one, 1), one, '2026-03-01')).toEqual([]);
  expect(readDelivery({ ...draftOf(one, 1), due: '', from: '' }, one, '2026-03-01')).toEqual([{ clear: 'from' }, { clear: 'due' }]);
});

test('pieces are a whole number from one', () => {
  for (const quantity of ['0', '1.5', '', 'two']) expect(readDelivery({ ...draftOf(undefined, 1), quantity }, undefined, '2026-03-01'), quantity).toBeNull();
});
