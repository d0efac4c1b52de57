import type { Route, RuleLine } from '../../bridge/protocol';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { money } from '../words/format';

/** A rule as a sentence, in three pieces and whole: "later drums", "needs", "later hubs". */
export function ruleSaid({ record, subject, subject_route, other, other_route }: RuleLine): Record<'before' | 'relation' | 'after' | 'whole', string> {
  const say = words().rules;
  const { relation = 'needs', cash } = record.values;
  const side = (name: string, route: Route | undefined): string => [name || say.gone, route ? routeWord(route) : ''].filter(Boolean).join(', ');
  const price = relation === 'goes-with' && cash ? say.without(money(cash)) : '';
  const [before, after] = [side(subject, subject_route), [side(other, other_route), price].filter(Boolean).join('; ')];
  return { before, relation: say.relations[relation], after, whole: `${before} ${say.relations[relation]} ${after}` };
}
