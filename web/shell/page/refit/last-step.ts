import { desk } from '../../bridge/desk';
import { noteOpen, openBefore } from '../reopening';

const key = (): string => `refit-step/${desk.current() ?? ''}`;

/** Where the work stood last, so that it is offered again by whatever way one comes back. */
export interface LastStep { assembly: string; part: string }

export function rememberStep({ assembly, part }: LastStep): void {
  const step = `${assembly}/${part}`;
  // Asked for at every drawing: written only when it is another one.
  if (openBefore(key()) !== step) noteOpen(key(), step);
}

export function lastStep(): LastStep | null {
  const [assembly = '', part = ''] = openBefore(key()).split('/');
  return assembly && part ? { assembly, part } : null;
}

/** All of it is on: there is nothing to come back to. */
export function forgetStep(): void {
  noteOpen(key(), '');
}
