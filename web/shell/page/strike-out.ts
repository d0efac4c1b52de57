import type { RecordView } from '../bridge/protocol';
import { carryOut } from './carry-out';

/** Strikes a record out, or brings it back, as it is on the screen: an edit that came in behind it brings it back again. */
export async function strikeOut({ id, seen }: Pick<RecordView, 'id' | 'seen'>, message: string, struck = true): Promise<boolean> {
  const { ok } = await carryOut({ do: 'change', ids: [id], changes: [{ struck }], seen }, message);
  return ok;
}
