import type { Day, Lack } from '../../bridge/protocol';
import { dayNear } from '../stores/when';
import { words } from '../words';

/** A day as it is said this year: "15 Mar"; with its year in any other. */
export function dayWords(text: Day, now = new Date()): string {
  return dayNear(new Date(`${text}T00:00`), now);
}

/** When a lack is over, as far as anybody knows. */
export function lackWhen({ own, day: from, no_date, overdue }: Lack): string {
  const say = words().refit.lacks;
  if (overdue) return say.overdue;
  // What is in the own hands needs no date: it waits for nobody.
  if (own) return say.own;
  if (from) return say.from(dayWords(from));
  return no_date ? say.noDate : '';
}
