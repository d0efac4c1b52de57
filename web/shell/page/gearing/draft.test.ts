import { expect, test } from 'vitest';
import type { Change, RecordView, Values } from '../../bridge/protocol';
import { draftOf, EMPTY_GEARING, readGearing, readRatio, type GearingDraft } from './draft';

const NEW: GearingDraft = { ...EMPTY_GEARING, swap: '', overdriveOn: '' };
const read = (typed: Partial<GearingDraft>, units: 'metric' | 'inch' = 'metric') => readGearing({ ...EMPTY_GEARING, name: 'As found', ...typed }, NEW, units);
const record = (values: Values): RecordView => ({ id: '0'.repeat(32), kind: 'gearing', values, struck: false, seen: {}, conflicts: [] });

test('ratios are read as people write them', () => {
  for (const text of ['4.22', '4,22', '4.22:1', '4.22 : 1', '4.220']) expect(readRatio(text, true), text).toBe(42_200);
  expect(readRatio('9/38', true)).toBe(42_222);
  expect(readRatio('38/9', true)).toBe(42_222);
  for (const text of ['', 'four', '0', '-4', '4/', '4/0', '4.5/2', '9/38/2', '9/38/']) expect(readRatio(text, true), text).toBeNull();
  expect(readRatio('9/38', false)).toBeNull();
});

test('a new one says all that was typed, and nothing else', () => {
  const { changes, errors } = read({ axle: '4.22', gears: ' 3.94, 1 ', tyre: '5.20-13', highest: '4800' });
  expect(errors).toEqual({});
  expect(changes).toEqual([{ name: 'As found' }, { swap: 'before' }, { axle_ratio: 42_200 }, { gear_ratios: '3.94, 1' }, { tyre: '5.20-13' }, { highest_turns: 4800 }]);
  expect(read({ overdrive: '0.778', overdriveOn: '2' }).changes).toEqual(expect.arrayContaining([{ overdrive: 7780 }, { overdrive_on: 2 }]));
});

test('turns are told in a mile or a kilometre, and kept alike', () => {
  const turns = (text: string, units: 'metric' | 'inch'): Change | undefined => read({ turns: text }, units).changes.find((change) => 'turns_per_mile' in change);
  expect(turns('881', 'inch')).toEqual({ turns_per_mile: 88_100 });
  expect(turns('547,4', 'metric')).toEqual({ turns_per_mile: 88_095 });
  expect(draftOf(record({ turns_per_mile: 88_095 }), 'metric').turns).toBe('547.4');
});

test('what cannot be meant is refused at its field', () => {
  const { errors } = readGearing({ ...EMPTY_GEARING, name: ' ', axle: 'long', overdrive: '9/38', turns: '-5', highest: '5500.5' }, NEW, 'metric');
  expect(Object.keys(errors).sort()).toEqual(['axle', 'highest', 'name', 'overdrive', 'turns']);
});

test('only what was changed is written, and what is emptied is cleared', () => {
  for (const units of ['metric', 'inch'] as const) {
    const before = draftOf(record({ name: 'a', swap: 'after', axle_ratio: 36_363, overdrive: 7_778, overdrive_on: 3, tyre: '5.20-13', circumference: 1_862_500_000, diameter: 575_000_001, turns_per_mile: 88_123, highest_turns: 5000 }), units);
    expect(readGearing(before, before, units)).toEqual({ changes: [], errors: {} });
    expect(readGearing({ ...before, axle: '', swap: 'candidate' }, before, units).changes).toEqual([{ swap: 'candidate' }, { clear: 'axle_ratio' }]);
  }
});
