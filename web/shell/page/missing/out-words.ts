import type { StoredLine } from '../../bridge/protocol';
import { dayNear } from '../stores/when';
import { words } from '../words';

/** "Out for work at Anvil Row, due 14 Mar, 3 days late". */
export function outSecond({ out, late }: Pick<StoredLine, 'out' | 'late'>, now = new Date()): string {
  const say = words().where;
  const values = out?.values;
  if (!values) return '';
  const { due } = values;
  const since = values.taken === undefined ? '' : say.since(dayNear(new Date(values.taken), now));
  return [say.out(values.out_for ?? 'work', values.who ?? ''), due ? say.due(dayNear(new Date(`${due}T12:00`), now)) : since, late === undefined ? '' : say.late(late, due !== undefined)].filter(Boolean).join(', ');
}
