import type { Looks, OwnOutcome } from '../../bridge/protocol';
import { bearingChecks } from './checks-bearing';
import { bodyChecks } from './checks-body';
import { brakeChecks } from './checks-brakes';
import { wearChecks } from './checks-wear';

/** One question, and what may be answered. */
export interface CheckWords<Outcome extends string = string> {
  /** Short, for a list: "Cracks". */
  name: string;
  /** The question itself. */
  ask: string;
  /** How to look, where that is not plain; empty otherwise. */
  how: string;
  /** What a standard calls it, in small print before its number; empty when none does. */
  small: string;
  /** The answers, in one to four words. */
  outcomes: Record<Outcome, string>;
  /** What an answer looks like, where a word does not say it. */
  looksLike?: Partial<Record<Outcome, string>>;
}

/** Some of the questions. */
export type ChecksOf<Questions extends keyof Looks> = { [Question in Questions]: CheckWords<Looks[Question]> };

/** Every question of the check-lists, for somebody with dirty hands. */
export const checks = { ...bearingChecks, ...wearChecks, ...brakeChecks, ...bodyChecks } satisfies ChecksOf<keyof Looks>;

/** The answers to a question of one's own. */
export const ownOutcomes = { good: 'good', doubtful: 'doubtful', rework: 'needs work', scrap: 'scrap' } satisfies Record<OwnOutcome, string>;
