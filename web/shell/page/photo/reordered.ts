import type { Command, RecordView } from '../../bridge/protocol';

/** The commands that move one record to another place among its own: only records whose number changes are written. */
export function reordered(records: readonly RecordView[], from: number, to: number): Command[] {
  const order = [...records];
  const [moved] = order.splice(from, 1);
  if (!moved) return [];
  order.splice(to, 0, moved);
  return order.flatMap((record, i): Command[] => (record.values.order === i + 1 ? [] : [{ do: 'change', ids: [record.id], changes: [{ order: i + 1 }] }]));
}
