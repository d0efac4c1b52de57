import type { MendChoice, RuleLine } from '../../bridge/protocol';
import { tagFigures } from '../parts/tag-figures';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { money } from '../words/format';

/** A breach in words: what stands against the rule, what mends it for how much, and what that chooses. */
export interface BreachSaid { against: string; mend: string; chooses: string }

export function breachSaid({ breach, other, record }: RuleLine): BreachSaid | null {
  if (!breach) return null;
  const say = words().rules.breaches;
  const named = other || words().rules.gone;
  const extra = breach.price && record.values.relation === 'goes-with' ? say.extra(money(breach.price)) : '';
  const against = [say.why[breach.why](named, breach.instead ? routeWord(breach.instead).toLowerCase() : ''), extra].filter(Boolean).join(' ');
  if (!breach.mend) return { against, mend: say.none, chooses: '' };
  const { choices, more } = breach.mend;
  const chooses = choices.map(choiceSaid).join(', ');
  const minor = Math.round(more.minor);
  const amount = minor === 0 ? say.same : minor > 0 ? say.more(money({ ...more, minor })) : say.less(money({ ...more, minor: -minor }));
  // What need not hold is cheapest left alone where the change costs more than it saves.
  return { against, mend: breach.price && minor >= 0 ? say.dearer(chooses, amount) : say.mend(chooses, amount), chooses };
}

function choiceSaid({ name, tag, route, from }: MendChoice): string {
  const say = words().rules;
  return say.breaches.choose([routeWord(route), from].filter(Boolean).join(', '), name || [say.noName, tagFigures(tag)].filter(Boolean).join(' '));
}
