// What is being typed and where the person is, written at every stroke and without waiting: the last line of defence when the
// page is ended between two keys. It holds no record: what is saved is taken out again.

import { mirror, mirrored } from './journal-mirror';

/** Where the person is; enough to come back to the same place, assembly and part. */
export interface Where {
  job: string | null;
  /** The address within the app, as `#/teardown`. */
  hash: string;
  /** By job: what is in hand at the strip. */
  strips: Record<string, InHand>;
}

/** What is in hand at the strip of one job. */
export interface InHand {
  assembly: string | null;
  /** The recorded part. */
  part: string | null;
  /** Id and number for the next part, made before its first photo. */
  draft: { id: string; tag: number } | null;
  /** The phone's own camera is out for a photo of this part. */
  waiting: boolean;
}

export const EMPTY_HANDS: InHand = { assembly: null, part: null, draft: null, waiting: false };

const WHERE = 'asfound.where';
const TYPING = 'asfound.typing';
const PREFERENCE = 'asfound.preference.';
const MOST_BYTES = 60_000;
const MOST_STRIPS = 20;

type Typing = [key: string, text: string][];

/** A line with the stamp that tells which of two copies is the later. */
interface Line { at: number; value: unknown }
let latest = 0;

const isLine = (value: unknown): value is Line => typeof value === 'object' && value !== null && 'at' in value && typeof value.at === 'number' && 'value' in value;

function parse(text: string | null): Line | null {
  try {
    const line: unknown = JSON.parse(text ?? 'null');
    return isLine(line) ? line : null;
  } catch {
    return null;
  }
}

function lineOf(key: string): Line | null {
  try {
    return parse(localStorage.getItem(key));
  } catch {
    // Refused: the journal is a safety net, the work goes on without it.
    return null;
  }
}

function keep(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // As above.
  }
}

function read<T>(key: string, fallback: T, sound: (value: unknown) => value is T): T {
  const value = lineOf(key)?.value;
  return sound(value) ? value : fallback;
}

function write(key: string, value: unknown): void {
  latest = Math.max(Date.now(), latest + 1);
  const text = JSON.stringify({ at: latest, value } satisfies Line);
  keep(key, text);
  mirror(key, text);
}

/** Before anything is read: takes over the lines that only the second copy has. */
export async function recover(): Promise<void> {
  for (const [key, text] of await mirrored()) {
    const [here, there] = [lineOf(key), parse(text)];
    if (there && there.at > (here?.at ?? 0)) keep(key, text);
    latest = Math.max(latest, there?.at ?? 0, here?.at ?? 0);
  }
  document.dispatchEvent(new CustomEvent('asf-preference'));
}

const isWhere = (value: unknown): value is Where =>
  typeof value === 'object' && value !== null && 'hash' in value && typeof value.hash === 'string'
  && 'job' in value && 'strips' in value && typeof value.strips === 'object' && value.strips !== null;

const isTyping = (value: unknown): value is Typing =>
  Array.isArray(value) && value.every((pair: unknown) => Array.isArray(pair) && pair.length === 2 && pair.every((part) => typeof part === 'string'));

const isText = (value: unknown): value is string => typeof value === 'string';

/** Where the person was last. */
export function where(): Where {
  return read(WHERE, { job: null, hash: '', strips: {} }, isWhere);
}

/** Notes where the person is now. */
export function at(now: Partial<Omit<Where, 'strips'>>): void {
  write(WHERE, { ...where(), ...now });
}

/** What was in hand at the strip of a job. */
export function inHand(job: string): InHand {
  return { ...EMPTY_HANDS, ...where().strips[job] };
}

/** Notes what is in hand at the strip of a job. */
export function hold(job: string, hand: Partial<InHand>): void {
  const { [job]: before, ...others } = where().strips;
  const kept = Object.entries(others).slice(-MOST_STRIPS);
  write(WHERE, { ...where(), strips: { ...Object.fromEntries(kept), [job]: { ...EMPTY_HANDS, ...before, ...hand } } });
}

/** Keeps what stands in a field now. The oldest gives way when there is too much. */
export function typing(key: string, text: string): void {
  const kept = read<Typing>(TYPING, [], isTyping).filter(([one]) => one !== key);
  kept.push([key, text]);
  while (kept.length > 1 && JSON.stringify(kept).length > MOST_BYTES) kept.shift();
  write(TYPING, kept);
}

/** What stood in a field and was not saved. */
export function typedBefore(key: string): string | null {
  return read<Typing>(TYPING, [], isTyping).find(([one]) => one === key)?.[1] ?? null;
}

/** It is saved, or given up. */
export function typed(key: string): void {
  write(TYPING, read<Typing>(TYPING, [], isTyping).filter(([one]) => one !== key));
}

/** A choice of this device alone, such as the hand it is held in. */
export function preference(name: string): string | null {
  return read<string | null>(PREFERENCE + name, null, (value): value is string | null => value === null || isText(value));
}

/** Keeps a choice of this device; tells `asf-preference` so that what is on the screen follows. */
export function prefer(name: string, value: string | null): void {
  write(PREFERENCE + name, value);
  document.dispatchEvent(new CustomEvent('asf-preference', { detail: { name, value } }));
}
