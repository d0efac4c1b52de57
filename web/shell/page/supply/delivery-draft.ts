import type { Change, RecordView } from '../../bridge/protocol';
import { readNumber } from '../words/read';

/** A delivery as it is typed. */
export interface DeliveryDraft extends Record<string, string> { from: string; quantity: string; due: string; here: string; arrived: string }

export function draftOf(record: RecordView | undefined, wanted: number): DeliveryDraft {
  const { from = '', quantity = wanted, due = '', arrived = '' } = record?.values ?? {};
  return { from, quantity: String(quantity), due, here: arrived ? 'yes' : '', arrived };
}

/** The changes of a new delivery, or of one that is there; null where the pieces are no number of them. */
export function readDelivery(draft: DeliveryDraft, record: RecordView | undefined, today: string): Change[] | null {
  const quantity = readNumber(draft.quantity);
  if (quantity === null || !Number.isInteger(quantity) || quantity < 1 || quantity > 100_000) return null;
  const from = draft.from.trim();
  const arrived = draft.here ? draft.arrived || today : '';
  const all: [keyof RecordView['values'] & ('from' | 'due' | 'arrived'), string][] = [['from', from], ['due', draft.due], ['arrived', arrived]];
  const changes: Change[] = record?.values.quantity === quantity ? [] : [{ quantity }];
  for (const [field, value] of all) {
    const stood = record?.values[field] ?? '';
    if (value !== stood) changes.push(value ? ({ [field]: value } as Change) : { clear: field });
  }
  return changes;
}
