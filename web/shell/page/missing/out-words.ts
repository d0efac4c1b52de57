import type { StoredLine } from '../../bridge/protocol';
import { words } from '../words';
import { day } from '../words/format';

/** "Out for work at Anvil Row, due 14 Mar, 3 days late". */
export function outSecond({ out, late }: StoredLine): string {
  const say = words().where;
  const values = out?.values;
  if (!values) return '';
  const { due } = values;
  const since = values.taken === undefined ? '' : say.since(day(new Date(values.taken)));
  return [say.out(values.out_for ?? 'work', values.who ?? ''), due ? say.due(day(new Date(`${due}T12:00`))) : since, late === undefined ? '' : say.late(late, due !== undefined)].filter(Boolean).join(', ');
}
