import { expect, test } from 'vitest';
import type { RecordView, Values } from '../../bridge/protocol';
import { draftOf, readTightening } from './tightening-draft.ts';

const record = (values: Values): RecordView => ({ id: 'a', kind: 'joint', values, struck: false, seen: {}, conflicts: [] });

test('what is put down unchanged writes nothing', () => {
  const begun = draftOf(record({ torque: 54_232_718, torque_unit: 'pound-foot', angle: 90, lubrication: 'oiled', renew: true, in_hand: 2, due: '2026-03-14' }), 'newton-metre');
  expect(begun.torque).toBe('40');
  expect(readTightening(begun, begun, {}, { piece: true })).toEqual({ changes: [], wrong: [] });
  expect(readTightening(begun, begun, {}, { piece: false })).toEqual({ changes: [], wrong: [] });
});

test('a figure comes with the unit it was read in; emptied, both go', () => {
  const begun = draftOf(record({}), 'newton-metre');
  expect(readTightening({ ...begun, torque: '40 lbf ft' }, begun, { amount: 54_232_718, unit: 'pound-foot' }, { piece: false }).changes).toEqual([{ torque: 54_232_718 }, { torque_unit: 'pound-foot' }]);
  const said = draftOf(record({ torque: 54_000_000 }), 'newton-metre');
  expect(readTightening({ ...said, torque: ' ' }, said, {}, { piece: false }).changes).toEqual([{ clear: 'torque' }, { clear: 'torque_unit' }]);
});

test('what a joint has not, a joint is not given, and the other way round', () => {
  const begun = draftOf(record({}), 'newton-metre');
  const typed = { ...begun, height: 'height', renew: 'new', here: '4', due: '2026-03-10' };
  expect(readTightening(typed, begun, {}, { piece: false }).changes).toEqual([{ at_ride_height: true }]);
  expect(readTightening(typed, begun, {}, { piece: true }).changes).toEqual([{ renew: true }, { in_hand: 4 }, { due: '2026-03-10' }]);
});

test('half a turn and a bit is no whole number of degrees', () => {
  const begun = draftOf(record({}), 'newton-metre');
  for (const angle of ['90.5', '-1', '2000', 'a bit']) expect(readTightening({ ...begun, angle }, begun, {}, { piece: false }).wrong, angle).toEqual(['angle']);
});
