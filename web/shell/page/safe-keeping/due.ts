import type { Keeping } from '../../bridge/desk';

/** After how many photos, or days, a job file is due. */
export interface Remind { photos: number; days: number }

export const USUAL: Remind = { photos: 50, days: 7 };

const DAY = 86_400_000;

export function daysSince(at: number, now: number): number {
  return Math.max(0, Math.floor((now - at) / DAY));
}

/** What the person set; half of it where the browser has not promised to keep anything, since the risk is greater. */
export function fitted(remind: Remind, { persisted, private_window }: Pick<Keeping, 'persisted' | 'private_window'>): Remind {
  if (persisted === true && !private_window) return remind;
  return { photos: Math.max(1, Math.ceil(remind.photos / 2)), days: Math.max(1, Math.ceil(remind.days / 2)) };
}

/** Whether a job file is due now. Nothing recorded since: never. */
export function isDue(remind: Remind, keeping: Keeping, now: number): boolean {
  const limit = fitted(remind, keeping);
  if (keeping.handed_out === null) return keeping.photos >= limit.photos;
  return keeping.photos_since >= limit.photos || (keeping.photos_since > 0 && daysSince(keeping.handed_out, now) >= limit.days);
}

/** Reads what the person set, as kept on this device. */
export function readRemind(kept: string | null): Remind {
  const [photos = NaN, days = NaN] = (kept ?? '').split(',').map(Number);
  return Number.isInteger(photos) && photos > 0 && Number.isInteger(days) && days > 0 ? { photos, days } : USUAL;
}
