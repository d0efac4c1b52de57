import { american } from './american';
import { british } from './british';
import type { Speech, Vocabulary } from './vocabulary';

let current: Speech = 'british';
let vocabulary: Vocabulary = british;

export function speech(): Speech {
  return current;
}

/** The trade words in use. */
export function trade(): Vocabulary {
  return vocabulary;
}

/** For dates and figures. */
export function locale(): string {
  return current === 'american' ? 'en-US' : 'en-GB';
}

/** Changes the words everywhere at once; what is on the screen follows. */
export function setSpeech(next: Speech): void {
  if (next === current) return;
  current = next;
  vocabulary = next === 'american' ? { ...british, ...american } : british;
  if (typeof document === 'undefined') return;
  document.documentElement.lang = locale();
  document.dispatchEvent(new Event('asf-speech'));
}
