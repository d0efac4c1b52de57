import { today } from '../today';
import { clock, day } from '../words/format';

/** "20:14" of today, else "2 Oct". */
export function when(at: number): string {
  const date = new Date(at);
  return today(date) === today() ? clock(date) : day(date);
}
