import { expect, test, vi } from 'vitest';
import type { RecordView, StepJoint, Values } from '../../bridge/protocol';

vi.mock('../carry-out', () => ({}));
vi.mock('../../bridge/desk', () => ({ newId: () => 'new' }));
const { ticking, waitsForHeight } = await import('./tick.ts');

const record = (id: string, kind: RecordView['kind'], values: Values): RecordView => ({ id, kind, values, struck: false, seen: { fit: [`${id}:1`] }, conflicts: [] });
const joint = (id: string, values: Values): StepJoint => ({ record: record(id, 'joint', values), pieces: [] });
const changes = (part: Values, joints: Record<string, Values>, tick: Parameters<typeof ticking>[1]): unknown => {
  const command = ticking({ record: record('part', 'part', part), joints: Object.entries(joints).map(([id, values]) => joint(id, values)) }, tick);
  return command.do === 'all' ? Object.fromEntries(command.commands.map((one) => (one.do === 'change' ? [one.ids[0], one.changes] : ['other', one]))) : command;
};

test('tightened: the joints with it, but for those that wait for the ride height', () => {
  expect(changes({}, { a: {}, b: { at_ride_height: true }, c: { tightened: 'tight' }, d: { tightened: 'finger-tight' } }, 'tightened'))
    .toEqual({ part: [{ fit: 'fitted' }], a: [{ tightened: 'tight' }], b: [{ tightened: 'finger-tight' }], d: [{ tightened: 'tight' }] });
});

test('finger-tight: nothing is said to be tight that was not', () => {
  expect(changes({ fit: 'tried' }, { a: {}, b: { tightened: 'tight' } }, 'finger-tight')).toEqual({ part: [{ fit: 'fitted' }], a: [{ tightened: 'finger-tight' }] });
});

test('off again: the work on it counts anew, and nothing of it is tight any more', () => {
  expect(changes({ fit: 'tried', finished: true }, { a: { tightened: 'tight', checked_again: true }, b: {} }, 'off-again'))
    .toEqual({ part: [{ fit: 'off-again' }, { clear: 'finished' }], a: [{ clear: 'tightened' }, { clear: 'checked_again' }] });
});

test('tried: the joints stay as they are', () => {
  expect(changes({}, { a: { tightened: 'finger-tight' } }, 'tried')).toEqual({ part: [{ fit: 'tried' }] });
});

test('what was seen goes with it', () => {
  const command = ticking({ record: record('part', 'part', {}), joints: [] }, 'tightened');
  expect(command).toEqual({ do: 'all', commands: [{ do: 'change', ids: ['part'], changes: [{ fit: 'fitted' }], seen: { fit: ['part:1'] } }] });
});

// Break: create no joint where there is none.
test('finger-tight with no joint recorded: one is made that stays loose until it is ticked', () => {
  const command = ticking({ record: record('part', 'part', {}), joints: [] }, 'finger-tight');
  expect(command.do === 'all' && command.commands[1]).toEqual({ do: 'create', id: 'new', kind: 'joint', changes: [{ of: 'part' }, { tightened: 'finger-tight' }] });
  // Where there is one, it is that one; what is tightened needs none.
  expect(changes({}, { a: {} }, 'finger-tight')).toEqual({ part: [{ fit: 'fitted' }], a: [{ tightened: 'finger-tight' }] });
  expect(changes({}, {}, 'tightened')).toEqual({ part: [{ fit: 'fitted' }] });
});

// Break: call everything tightened that was ticked as that.
test('what is tightened at ride height is not called tightened now', () => {
  const waits = (values: Values, tick: Parameters<typeof waitsForHeight>[1] = 'tightened'): boolean => waitsForHeight({ joints: [joint('a', {}), joint('b', values)] }, tick);
  expect([waits({ at_ride_height: true }), waits({ at_ride_height: true, tightened: 'tight' }), waits({}), waits({ at_ride_height: true }, 'finger-tight')]).toEqual([true, false, false, false]);
});
