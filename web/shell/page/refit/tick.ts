import { newId } from '../../bridge/desk';
import type { Change, Command, RecordView, RefitStepView, Tightened } from '../../bridge/protocol';
import { seenOf } from '../sheet/write';

/** What is said of a step: on for good and tightened, on for good with its fasteners run in by hand, on for trial, off again for finish, not on after all. */
export type Tick = 'tightened' | 'finger-tight' | 'tried' | 'off-again' | 'not-on';

/** One command for the part and its joints, so that one undo takes all of it back. Overwrites what was on the screen, no more. */
export function ticking({ record, joints }: Pick<RefitStepView, 'record' | 'joints'>, tick: Tick): Command {
  const changes = [change(record, partChanges(record, tick)), ...joints.map((joint) => change(joint.record, jointChanges(joint.record, tick)))];
  // With no joint recorded nothing would remember that it is only run in by hand, and nothing would stand in the way of the road.
  const remembered: Command[] = tick === 'finger-tight' && joints.length === 0 ? [{ do: 'create', id: newId(), kind: 'joint', changes: [{ of: record.id }, { tightened: 'finger-tight' }] }] : [];
  return { do: 'all', commands: [...changes.filter((one) => one !== null), ...remembered] };
}

/** Ticked as tightened, something of it still waits for the ride height. */
export function waitsForHeight({ joints }: Pick<RefitStepView, 'joints'>, tick: Tick): boolean {
  return tick === 'tightened' && joints.some(({ record: { values } }) => values.at_ride_height && values.tightened !== 'tight');
}

function partChanges({ values }: RecordView, tick: Tick): Change[] {
  switch (tick) {
    case 'tightened': case 'finger-tight': return [{ fit: 'fitted' }];
    case 'tried': return [{ fit: 'tried' }];
    // It goes for finish now: whatever was done to it before does not count.
    case 'off-again': return [{ fit: 'off-again' }, ...(values.finished === undefined ? [] : [{ clear: 'finished' as const }])];
    case 'not-on': return values.fit === undefined ? [] : [{ clear: 'fit' }];
  }
}

function jointChanges({ values }: RecordView, tick: Tick): Change[] {
  if (tick === 'tried') return [];
  if (tick === 'off-again' || tick === 'not-on') {
    return (['tightened', 'checked_again'] as const).filter((field) => values[field] !== undefined).map((clear) => ({ clear }));
  }
  if (values.tightened === 'tight') return [];
  // What is tightened at ride height waits until the vehicle stands on its wheels.
  const tightened: Tightened = tick === 'finger-tight' || values.at_ride_height ? 'finger-tight' : 'tight';
  return values.tightened === tightened ? [] : [{ tightened }];
}

function change(record: RecordView, changes: Change[]): Command | null {
  return changes.length ? { do: 'change', ids: [record.id], changes, seen: seenOf(record, changes) } : null;
}
