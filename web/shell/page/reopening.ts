// A form that stood open when the page was ended stands open again; one that was closed, or left with its place, does not.

import * as journal from './journal';

const nameOf = (place: string): string => `open/${place}`;

/** Notes that a form of a place is open, and for what; nothing: it is closed. */
export function noteOpen(place: string, what: string): void {
  if (what) journal.typing(nameOf(place), what);
  else if (openBefore(place)) journal.typed(nameOf(place));
}

/** For what the form of a place stood open when the page was ended; else empty. */
export function openBefore(place: string): string {
  return journal.typedBefore(nameOf(place)) ?? '';
}
