import type { PartLine, RecordView } from '../../bridge/protocol';
import { tagFigures } from '../parts/tag-figures';
import { words } from '../words';

/** What can stand on either side of a rule, in the order of a chooser: parts by name, then donors. */
export function sidesOf(rows: readonly PartLine[], vehicles: readonly RecordView[]): (readonly [id: string, word: string])[] {
  const say = words();
  const parts = rows.map(({ id, tag, name, side }) => [id, [name || say.rules.noName, side ? say.sides[side] : '', tagFigures(tag)].filter(Boolean).join(' ')] as const);
  parts.sort(([, one], [, other]) => one.localeCompare(other, undefined, { numeric: true }));
  const donors = vehicles.filter(({ struck, values }) => !struck && values.donor).map(({ id, values }) => [id, say.rules.donor(values.name ?? say.vehicles.noName)] as const);
  return [...parts, ...donors];
}
