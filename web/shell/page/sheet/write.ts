import type { Change, FieldName, RecordView, Seen } from '../../bridge/protocol';
import { carryOut } from '../carry-out';

/** Writes values of one record over what was seen on the screen, so that what came in between is not lost. */
export async function write(record: RecordView, changes: Change[], message = ''): Promise<boolean> {
  const { ok } = await carryOut({ do: 'change', ids: [record.id], changes, seen: seenOf(record, changes) }, message);
  return ok;
}

/** What was seen of the fields that are changed. */
export function seenOf(record: RecordView, changes: readonly Change[]): Seen {
  const seen: Seen = {};
  for (const change of changes) {
    const field = fieldOf(change);
    seen[field] = record.seen[field] ?? [];
  }
  return seen;
}

/** The same for a line that is edited: '' once it is stored, null when it was not. */
export async function putDown(record: RecordView | undefined, change: Change, message: string): Promise<string | null> {
  return record && await write(record, [change], message) ? '' : null;
}

/** The field that a change writes. */
export function fieldOf(change: Change): FieldName {
  return 'clear' in change ? change.clear : (Object.keys(change)[0] as FieldName);
}
