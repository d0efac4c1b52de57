import type { Certainty, Change, Correctness, Currency, FieldName, QuoteCost, RateBasis, Route, StartingValues, Values } from '../../bridge/protocol';
import * as journal from '../journal';
import { words } from '../words';
import { ALL_FIGURES, figureText, FIGURES, readFigure, type Figure } from './figure-kinds';

/** The figures that are said with how sure they are. */
export const JUDGED = ['cash', 'own_time', 'chance', 'life', 'wait'] as const;
export type Judged = (typeof JUDGED)[number];

/** A quote as it is being entered: texts, since half a figure is not one yet. */
export interface QuoteDraft {
  route: Route;
  from: string;
  /** Of its prices. */
  currency: Currency;
  /** What the price is for one of; empty where it is for all. */
  per: RateBasis | '';
  text: Record<Figure, string>;
  how: Record<Judged, Certainty>;
  fails_at_bench: boolean;
  correctness: Correctness | '';
  /** A day, or empty. */
  valid_until: string;
  /** The quote that is turned to, or empty. */
  fallback: string;
  /** The donor that it comes from, or empty. */
  vehicle: string;
}

export type DraftErrors = Partial<Record<Figure | 'valid_until', string>>;

export const emptyDraft = (route: Route, currency: Currency): QuoteDraft => ({
  route, from: '', currency, per: '', text: Object.fromEntries(ALL_FIGURES.map((figure) => [figure, ''])) as Record<Figure, string>,
  how: { cash: 'about', own_time: 'about', chance: 'about', life: 'about', wait: 'about' }, fails_at_bench: false, correctness: '', valid_until: '', fallback: '', vehicle: '',
});

/** A quote that is there, to be changed. */
export function draftOf(quote: QuoteCost, currency: Currency): QuoteDraft {
  const { values } = quote.record;
  const prices = ALL_FIGURES.map((figure) => values[figure]).filter((value) => typeof value === 'object');
  const { rate } = values;
  const empty = emptyDraft(quote.route, rate?.currency ?? prices[0]?.currency ?? currency);
  // A price for one stands where the price for all would.
  const text = Object.fromEntries(ALL_FIGURES.map((figure) => [figure, figureText(figure, figure === 'cash' && rate ? { cash: rate } : values)])) as Record<Figure, string>;
  return {
    ...empty, from: values.from ?? '', text, per: rate ? values.rate_basis ?? 'piece' : '',
    how: { cash: howOf(values, 'cash'), own_time: howOf(values, 'own_time'), chance: howOf(values, 'chance'), life: howOf(values, 'life'), wait: howOf(values, 'wait') },
    fails_at_bench: values.fails_at_bench ?? false, correctness: values.correctness ?? '', valid_until: values.valid_until ?? '', fallback: values.fallback ?? '', vehicle: values.vehicle ?? '',
  };
}

/** A figure that stands without a word counts as sure: changing another one must not make it a guess. */
function howOf(values: Values, figure: Judged): Certainty {
  const isSaid = values[figure] !== undefined || (figure === 'cash' && values.rate !== undefined);
  return values[`${figure}_certainty`] ?? (isSaid ? 'sure' : 'about');
}

/** What the draft says, or what is wrong with it. */
export function readDraft(draft: QuoteDraft): { changes: Change[]; errors: DraftErrors } {
  const say = words().costing.form;
  const errors: DraftErrors = {};
  const changes: Change[] = [{ route: draft.route }, draft.from.trim() ? { from: draft.from.trim() } : { clear: 'from' }];
  for (const figure of ALL_FIGURES) {
    const read = readFigure(figure, draft.text[figure], draft.currency);
    if (typeof read === 'string') errors[figure] = read;
    else if (figure === 'cash') changes.push(...priceOf(read, draft.per));
    else changes.push(read);
  }
  // What comes from a donor that is known may cost nothing on top.
  const isFromDonor = draft.route === 'donor' && draft.vehicle !== '';
  if (!draft.text.cash.trim() && !draft.text.own_time.trim() && !isFromDonor) errors.cash = say.nothing;
  for (const judged of JUDGED) Object.assign(errors, crossed(judged, changes, errors));
  for (const judged of JUDGED) {
    const field = `${judged}_certainty` as const;
    changes.push(draft.text[judged].trim() ? ({ [field]: draft.how[judged] } as unknown as Change) : { clear: field });
  }
  changes.push(draft.fails_at_bench ? { fails_at_bench: true } : { clear: 'fails_at_bench' });
  changes.push(draft.correctness ? { correctness: draft.correctness } : { clear: 'correctness' });
  changes.push(draft.fallback ? { fallback: draft.fallback } : { clear: 'fallback' });
  // Only what comes from a donor names one.
  changes.push(isFromDonor ? { vehicle: draft.vehicle } : { clear: 'vehicle' });
  if (draft.valid_until && !/^\d{4}-\d{2}-\d{2}$/.test(draft.valid_until)) errors.valid_until = say.wrongDay;
  changes.push(draft.valid_until ? { valid_until: draft.valid_until } : { clear: 'valid_until' });
  return { changes, errors };
}

/** A price for all, or for one of something: never both. */
function priceOf(read: Change, per: RateBasis | ''): Change[] {
  if (!per || !('cash' in read)) return [read, { clear: 'rate' }, { clear: 'rate_basis' }];
  return [{ clear: 'cash' }, { rate: read.cash }, { rate_basis: per }];
}

/** Least and most stand around the figure: what does not would be passed over in silence. */
function crossed(figure: Judged, changes: readonly Change[], errors: DraftErrors): DraftErrors {
  const say = words().costing.form;
  const [least, most] = [`${figure}_least`, `${figure}_most`] as const;
  if (errors[figure] || errors[least] || errors[most]) return {};
  const size = (member: Figure): number | undefined => {
    const value = (changes.find((change) => member in change) as Partial<Record<Figure, number | { minor: number }>> | undefined)?.[member];
    return typeof value === 'object' ? value.minor : value;
  };
  const [low, likely, high] = [size(least), size(figure), size(most)];
  if (low !== undefined && high !== undefined && low > high) return { [least]: say.crossed };
  if (likely === undefined) return {};
  if (low !== undefined && low > likely) return { [least]: say.leastAbove };
  return high !== undefined && high < likely ? { [most]: say.mostBelow } : {};
}

/** What a new quote starts with where nothing was said: marked as a starting value, and counted as a guess. */
export function withStartingValues(changes: readonly Change[], starting: StartingValues | undefined): Change[] {
  const given = changes.filter((change) => !('clear' in change));
  if (!starting) return given;
  const has = (field: FieldName): boolean => given.some((change) => field in change);
  return [
    ...given,
    ...(has('own_time') ? [] : [{ own_time: starting.own_time }, { own_time_certainty: 'starting' as const }]),
    ...(has('chance') ? [] : [{ chance: starting.chance }, { chance_certainty: 'starting' as const }]),
    ...(has('strip_again') || has('fails_at_bench') ? [] : [{ strip_again: starting.strip_again }]),
    ...(has('life') ? [] : [{ life: starting.life }, { life_certainty: 'starting' as const }]),
  ];
}

/** What was being entered when the page was ended. */
export function draftKept(key: string): QuoteDraft | null {
  try {
    const kept: unknown = JSON.parse(journal.typedBefore(key) ?? 'null');
    // One that was begun before donors were named, or rates were known, is one still.
    const whole: unknown = typeof kept === 'object' && kept !== null ? { vehicle: '', per: '', ...kept } : kept;
    return isDraft(whole) ? whole : null;
  } catch {
    return null;
  }
}

function isDraft(kept: unknown): kept is QuoteDraft {
  if (typeof kept !== 'object' || kept === null) return false;
  const like = kept as Record<string, unknown>;
  const text = like.text as Record<string, unknown> | undefined;
  return Object.keys(emptyDraft('buy', 'GBP')).every((member) => member in like) && typeof text === 'object' && Object.keys(FIGURES).every((figure) => typeof text[figure] === 'string');
}
