import type { CommissioningView } from '../../bridge/protocol';
import { words } from '../words';

/** What the record knows to be left before the road: asked about, but for what is loose, which is refused. */
export function leftBeforeRoad(view: Pick<CommissioningView, 'steps' | 'fluids' | 'open'>, unchecked: number, isLowered: boolean): string[] {
  const say = words().refit.gates.anyway;
  const lines = view.steps.filter(({ record }) => !record).length;
  // Whatever was put down as a fluid came out, and is to go in again; how much of it may be unknown.
  const fluids = view.fluids.filter(({ values }) => !values.filled).length;
  return [...(isLowered ? [] : [say.wheels]), ...(view.open ? [say.assemblies(view.open)] : []), ...(fluids ? [say.fluids(fluids)] : []), ...(unchecked ? [say.unchecked(unchecked)] : []), ...(lines ? [say.lines(lines)] : [])];
}
