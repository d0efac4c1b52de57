import type { Failure } from './calls.ts';

export const troubleCodes = [
  'quota-exceeded',
  'transaction-aborted',
  'connection-lost',
  'newer-database',
  'closed-elsewhere',
  'chunk-damaged',
  'worker-trapped',
  'private-window',
  'open-hung',
  'read-failed',
] as const;

export type TroubleCode = (typeof troubleCodes)[number];

/** What is wrong with storing, with how much is safe and how much waits. */
export interface StoreTrouble {
  code: TroubleCode;
  /** Entries of the open job that are stored. */
  safe: number;
  /** Commands that are not answered yet. */
  waiting: number;
  /** What the browser said, for a report. */
  detail?: string;
}

function isCode(code: string): code is TroubleCode {
  return (troubleCodes as readonly string[]).includes(code);
}

/** A worker's failure as the trouble that it is. */
export function troubleOf(failure: Failure, safe: number, waiting: number): StoreTrouble {
  return { code: isCode(failure.code) ? failure.code : 'read-failed', safe, waiting, detail: failure.detail };
}
