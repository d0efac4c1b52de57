import type { BreakEven, CostView, QuoteCost } from '../../bridge/protocol';

/** Where the order of two routes turns round. */
export interface FlipPoint {
  /** The quote done at the own bench, whose hours decide. */
  bench: QuoteCost;
  against: QuoteCost;
  hours: number;
  /** `cheapest`: below these hours it is the cheapest of all; `cheaper`: than the other; `would-be`: it is not, but would be. */
  says: 'cheapest' | 'cheaper' | 'would-be';
}

const BENCH = new Set(['use-again', 'repair-here', 'send-out', 'irreplaceable']);

/** The hours that settle the matter, seen from the cheapest quote; nothing where hours do not decide. */
export function flipPoint(view: CostView): FlipPoint | null {
  const find = (id: string | undefined): QuoteCost | undefined => view.quotes.find((quote) => quote.id === id);
  const cheapest = find(view.cheapest);
  if (!cheapest) return null;
  return holds(view, cheapest, find) ?? wouldBe(view, cheapest, find);
}

type Find = (id: string) => QuoteCost | undefined;

/** The cheapest is done at the bench: the first other quote that more hours would make cheaper. */
function holds(view: CostView, cheapest: QuoteCost, find: Find): FlipPoint | null {
  const first = least(view.break_evens.filter(({ quote, hours }) => quote === cheapest.id && hours * 60 >= cheapest.own_time));
  const against = first && find(first.against);
  if (!first || !against) return null;
  // What the others cost can only rise with its hours, where they fall back on it: below this sum none of them is cheaper.
  const atFlip = cheapest.expected.minor + (first.hours - cheapest.own_time / 60) * view.hour_value.minor;
  const others = view.quotes.filter(({ allowed, id, route }) => allowed && id !== cheapest.id && BENCH.has(route));
  return { bench: cheapest, against, hours: first.hours, says: others.every(({ expected }) => expected.minor >= atFlip) ? 'cheapest' : 'cheaper' };
}

/** The cheapest is bought: what the bench would have to do it in. */
function wouldBe(view: CostView, cheapest: QuoteCost, find: Find): FlipPoint | null {
  const best = view.break_evens.filter(({ against, hours }) => against === cheapest.id && hours > 0).reduce<BreakEven | undefined>((most, one) => (most && most.hours >= one.hours ? most : one), undefined);
  const bench = best && find(best.quote);
  return best && bench ? { bench, against: cheapest, hours: best.hours, says: 'would-be' } : null;
}

function least(all: readonly BreakEven[]): BreakEven | undefined {
  return all.reduce<BreakEven | undefined>((first, one) => (first && first.hours <= one.hours ? first : one), undefined);
}
