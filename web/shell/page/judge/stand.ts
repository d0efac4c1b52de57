import type { AskedView, InspectView } from '../../bridge/protocol';
import { familyName } from './said';

/** What is open: the choice of the family, a question by its place, a question of one's own, or the result. */
export type Stand = { is: 'family' | 'own' | 'result' } | { is: 'question'; index: number };

/** Where an address leads: to what it names, else to the family while none is said, the first open question, the result. */
export function standAt(view: InspectView, wanted: string | null): Stand {
  if (wanted === 'family' || !familyName(view.family, view.own_families)) return { is: 'family' };
  if (wanted === 'own' || wanted === 'result') return { is: wanted };
  const named = view.asked.findIndex(({ question }) => question === wanted);
  const index = named < 0 ? view.next : named;
  return index === undefined ? { is: 'result' } : { is: 'question', index };
}

/** Where one goes after a question: to the next one that is open, else to the first before it, else to the result. */
export function after({ asked }: InspectView, index: number): string {
  const later = asked.find((one, i) => i > index && isOpen(one));
  return (later ?? asked.find((one, i) => i < index && isOpen(one)))?.question ?? 'result';
}

/** The questions that have neither an answer nor were left out. */
export function open({ asked }: InspectView): number {
  return asked.filter(isOpen).length;
}

function isOpen({ answer, skipped }: AskedView): boolean {
  return answer === undefined && !skipped;
}
