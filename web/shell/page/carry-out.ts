import { desk } from '../bridge/desk';
import type { Answer, Beside } from '../bridge/desk';
import type { Command, Problem } from '../bridge/protocol';

/** Told on the document after something was recorded; with an entry it can be undone. */
export interface Done { message: string; entry: string | null }
/** Told on the document when nothing was done. */
export interface Refused { problems: readonly Problem[] }

declare global {
  interface DocumentEventMap {
    'asf-done': CustomEvent<Done>;
    'asf-refused': CustomEvent<Refused>;
    /** Told with the entry that was taken back. */
    'asf-taken-back': CustomEvent<string>;
  }
}

/**
 * Carries a command out, says so, and offers to undo it; under the same `id` it is the same command tried again. What went wrong is told as
 * `asf-refused`; trouble with storing by the desk.
 */
export async function carryOut(command: Command, message = '', beside: Beside[] = [], id?: string): Promise<Answer> {
  const answer = await desk.command(command, beside, id);
  if (answer.ok) tellDone(message, answer.entry);
  else tellRefused(answer.problems);
  return answer;
}

/** Says that something was recorded; with a message it can be undone. */
export function tellDone(message: string, entry: string | null | undefined): void {
  tell('asf-done', { message, entry: message ? entry ?? null : null });
}

/** Says that nothing was done. */
export function tellRefused(problems: readonly Problem[]): void {
  if (problems.length > 0) tell('asf-refused', { problems });
}

/** Takes one entry back. */
export async function takeBack(entry: string, message: string): Promise<Answer> {
  const answer = await carryOut({ do: 'undo', entry });
  if (answer.ok) {
    tell('asf-done', { message, entry: null });
    document.dispatchEvent(new CustomEvent('asf-taken-back', { detail: entry }));
  }
  return answer;
}

function tell(name: 'asf-done' | 'asf-refused', detail: Done | Refused): void {
  document.dispatchEvent(new CustomEvent(name, { detail }));
}
