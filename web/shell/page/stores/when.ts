import { today } from '../today';
import { clock, day, dayOfYear } from '../words/format';

/** "20:14" of today, else "2 Oct"; with its year in any other. */
export function when(at: number, now = new Date()): string {
  const date = new Date(at);
  return today(date) === today(now) ? clock(date) : dayNear(date, now);
}

/** "2 Oct" of this year, "2 Oct 2024" of another. */
export function dayNear(at: Date, now = new Date()): string {
  return at.getFullYear() === now.getFullYear() ? day(at) : dayOfYear(at);
}
