import type { Side } from '../../bridge/protocol';
import type { Bench } from './bench';

/** The side of what is in hand: of the part, else of its assembly. */
export function sideInHand({ view }: Bench): Side | undefined {
  return view?.part?.line.side ?? view?.assembly?.side;
}

/** Front or rear, when the name of an assembly says so. The record knows sides alone; the word is the person's own. */
export function endOf(name: string): 'front' | 'rear' | '' {
  if (/\bfront\b/i.test(name)) return 'front';
  return /\brear\b/i.test(name) ? 'rear' : '';
}
