import type { PlanChoice } from '../../bridge/protocol';

/** A part that two plans settle differently; one of them may leave it out. */
export interface Differing { one: PlanChoice | undefined; other: PlanChoice | undefined }

/** Parts with another quote in the other plan, in the order of the first. */
export function differing(one: readonly PlanChoice[], other: readonly PlanChoice[]): Differing[] {
  const there = new Map(other.map((choice) => [choice.part, choice]));
  const here = new Set(one.map(({ part }) => part));
  const changed = one.filter(({ part, quote }) => there.get(part)?.quote !== quote).map((choice) => ({ one: choice, other: there.get(choice.part) }));
  return [...changed, ...other.filter(({ part }) => !here.has(part)).map((choice) => ({ one: undefined, other: choice }))];
}
