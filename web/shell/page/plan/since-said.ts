import type { KeptPart, KeptPlan, KeptSince, Money } from '../../bridge/protocol';
import { tagFigures } from '../parts/tag-figures';
import { words } from '../words';
import { listed, money } from '../words/format';

/** As many parts as are named. */
const NAMED = 3;

/** What has changed since a plan was kept, a sentence each. */
export function sinceSaid({ parts, more, kept }: KeptPlan, hourValue: Money): string[] {
  const say = words().plan.kept;
  const of = (since: KeptSince): string => named(parts.filter((part) => part.since === since));
  // A part may have another price and be told for something graver.
  const priced = named(parts.filter((part) => part.more));
  const [gone, barred, partGone, later] = [of('quote-gone'), of('barred'), of('part-gone'), of('later')];
  const amount = money({ ...more, minor: Math.abs(more.minor) });
  const said = [
    priced && (more.minor === 0 ? say.even(priced) : more.minor > 0 ? say.dearer(priced, amount) : say.cheaper(priced, amount)),
    gone && say.gone(gone), barred && say.barred(barred), later && say.later(later), (gone || barred || later) && say.cheapest, partGone && say.partGone(partGone),
    kept.hour_value && kept.hour_value.minor !== hourValue.minor && say.hour(money(kept.hour_value), money(hourValue)),
  ];
  const told = said.filter((sentence): sentence is string => Boolean(sentence));
  return told.length > 0 ? told : [say.same];
}

function named(parts: readonly KeptPart[]): string {
  const say = words().plan.kept;
  const names = parts.slice(0, NAMED).map(({ tag, name }) => name || (tag === undefined ? say.unknown : tagFigures(tag)));
  return listed(parts.length > NAMED ? [...names, say.others(parts.length - NAMED)] : names);
}
