import type { Certainty, CostView, Flip, Input, QuoteCost } from '../../bridge/protocol';
import { words } from '../words';
import { hours, hoursDecimal, money, moneyRound, number } from '../words/format';
import { routeWord } from './route-word';

/** One flip in words: what leads up to the figure, the figure at which it turns, and what was said. */
export interface FlipSaid { lead: string; bold: string; now: string; certainty: Certainty | undefined }

const OF_JOB: ReadonlySet<Input> = new Set(['hour_value', 'interest', 'years']);
/** What is most likely to be wrong comes first. */
const WEIGHT: readonly Input[] = ['own_time', 'chance', 'cash', 'life', 'hour_value', 'strip_again', 'years', 'freight', 'surcharge', 'withheld', 'tax', 'duty', 'consumables', 'interest'];

/** Figures that are spoken of although nobody said them. */
const ALWAYS: ReadonlySet<Input> = new Set(['cash', 'own_time', 'chance', 'hour_value', 'interest', 'years']);

/** The flips of what was said, those of the cheapest quote first, the likeliest to matter first. */
export function flipsInOrder(view: CostView): Flip[] {
  const rank = ({ quote, input }: Flip): number => (quote === undefined || quote === view.cheapest ? 0 : WEIGHT.length) + WEIGHT.indexOf(input);
  const isSaid = ({ quote, input }: Flip): boolean => ALWAYS.has(input) || view.quotes.find(({ id }) => id === quote)?.record.values[input as Exclude<Input, 'years'>] !== undefined;
  return view.flips.filter(isSaid).sort((a, b) => rank(a) - rank(b) || (a.beyond === b.beyond ? 0 : a.beyond === 'above' ? -1 : 1));
}

export function flipSaid(view: CostView, flip: Flip): FlipSaid {
  const say = words().costing.flips;
  const cheapest = view.quotes.find(({ id }) => id === view.cheapest);
  const own = view.quotes.find(({ id }) => id === flip.quote);
  const then = view.quotes.find(({ id }) => id === flip.then);
  const holds = OF_JOB.has(flip.input) || own?.id === cheapest?.id;
  const named = own ? words().costing.sentence.doing[own.route] : '';
  // What is cheapest has just been spoken of, and so has what comes first; and it is the part that lasts, not the doing.
  const isIt = holds ? flip.input === 'life' : own?.id === then?.id;
  const doing = isIt ? say.it : named;
  const phrase = say.phrase[flip.input](doing);
  const lead = holds ? say.holds(phrase) : say.comesFirst(then ? routeWord(then.route) : '', phrase);
  // As long as it holds it stays on this side of the figure; the other comes first on the far side.
  const isUnder = holds ? flip.beyond === 'above' : flip.beyond === 'below';
  const value = valueOf(view, flip.input, flip.at, false);
  return { lead, bold: isUnder ? say.under(value) : say.over(value), now: valueOf(view, flip.input, flip.now, true), certainty: certaintyOf(flip.input, own) };
}

function valueOf(view: CostView, input: Input, value: number, exact: boolean): string {
  const say = words().costing.flips;
  const { currency } = view;
  switch (input) {
    case 'own_time': case 'strip_again': return exact && (value % 60 === 0 || value < 60) ? hours(Math.round(value)) : hoursDecimal(value);
    case 'chance': case 'withheld': return say.times(number(value * 100, value * 100 < 10 ? 1 : 0));
    case 'life': return say.years(number(value / 12, Math.abs(value / 12 - Math.round(value / 12)) < 0.01 ? 0 : 1));
    case 'interest': return say.percent(number(value * 100, 1));
    case 'years': return say.years(number(value, value % 1 === 0 ? 0 : 1));
    default: return exact ? money({ minor: Math.round(value), currency }) : moneyRound({ minor: value, currency });
  }
}

function certaintyOf(input: Input, quote: QuoteCost | undefined): Certainty | undefined {
  if (!quote) return 'sure';
  const { values } = quote.record;
  const given: Partial<Record<Input, Certainty | undefined>> = { cash: values.cash_certainty, own_time: values.own_time_certainty, chance: values.chance_certainty, life: values.life_certainty };
  return given[input] ?? 'sure';
}
