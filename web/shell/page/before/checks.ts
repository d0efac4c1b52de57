import type { AssemblyLine, Check, RecordView } from '../../bridge/protocol';

/** What is looked at before anything is slackened, in the order of the work. */
export const CHECKS: readonly Check[] = ['height', 'free-play', 'gaps', 'index-marks', 'tight-fasteners', 'photos'];

/** What was said to one check, latest. */
export function answerTo(line: AssemblyLine, check: Check): RecordView | undefined {
  return [...line.before].reverse().find(({ values, struck }) => values.check === check && !struck);
}

/** How many are answered or skipped. */
export function answered(line: AssemblyLine): number {
  return CHECKS.filter((check) => answerTo(line, check) !== undefined).length;
}
