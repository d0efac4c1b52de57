import { expect, test } from 'vitest';
import type { CommissioningView, RecordView, Values } from '../../bridge/protocol';
import { leftBeforeRoad } from './before-road';

const fluid = (values: Values): RecordView => ({ id: 'f', kind: 'fluid', values, struck: false, seen: {}, conflicts: [] });
const view = (fluids: Values[], more: Partial<CommissioningView> = {}): Pick<CommissioningView, 'steps' | 'fluids' | 'open'> => ({ steps: [], open: 0, ...more, fluids: fluids.map(fluid) });
const said = (...given: Parameters<typeof leftBeforeRoad>): string[] => leftBeforeRoad(...given).map((line) => line.replaceAll('\u00a0', ' '));

// Break: leave the fluids, or the second check, out.
test('the road asks about fluids that are not in and joints not gone over again', () => {
  expect(said(view([{ drained: 1200 }, { capacity: 500, filled: 0 }, { drained: 900, filled: 900 }]), 3, true)).toEqual(['2 fluids are not filled in.', '3 joints not checked a second time.']);
  expect(said(view([{ name: 'Brake fluid' }]), 1, true)).toEqual(['1 fluid is not filled in.', '1 joint not checked a second time.']);
});

test('with all of it done nothing is asked', () => {
  expect(said(view([{ drained: 900, filled: 900 }]), 0, true)).toEqual([]);
  expect(said(view([], { open: 2, steps: [{ step: 'bleed' }] }), 0, false)).toEqual(['It does not stand on its wheels.', '2 assemblies not together.', '1 line of commissioning open.']);
});
