import type { Change, Certainty, Currency, FieldName, QuoteCost, Route } from '../../bridge/protocol';
import * as journal from '../journal';
import { words } from '../words';
import { readHours, readMoney, readNumber } from '../words/read';
import { minorDigits } from '../words/format';

/** A quote as it is being entered: texts, since half a figure is not one yet. */
export interface QuoteDraft {
  route: Route;
  from: string;
  cash: string;
  cashCertainty: Certainty;
  ownTime: string;
  ownTimeCertainty: Certainty;
  chance: string;
  chanceCertainty: Certainty;
  strip: string;
}

export type DraftErrors = Partial<Record<'cash' | 'ownTime' | 'chance' | 'strip', string>>;

export const emptyDraft = (route: Route): QuoteDraft => ({
  route, from: '', cash: '', cashCertainty: 'about', ownTime: '', ownTimeCertainty: 'about', chance: '', chanceCertainty: 'about', strip: '',
});

/** A quote that is there, to be changed. */
export function draftOf(quote: QuoteCost): QuoteDraft {
  const { values } = quote.record;
  const inHours = (minutes: number | undefined): string => (minutes ? String(Number((minutes / 60).toFixed(2))) : '');
  return {
    ...emptyDraft(quote.route), from: quote.from ?? '',
    cash: quote.cash ? String(quote.cash.minor / 10 ** minorDigits(quote.cash.currency)) : '', cashCertainty: values.cash_certainty ?? 'about',
    ownTime: minutesText(quote.own_time, inHours), ownTimeCertainty: values.own_time_certainty ?? 'about',
    chance: quote.chance > 0 ? String(quote.chance / 100) : '', chanceCertainty: values.chance_certainty ?? 'about',
    strip: minutesText(quote.strip_again, inHours),
  };
}

/** Hours as a fraction where that is exact, else with minutes. */
function minutesText(minutes: number, inHours: (minutes: number) => string): string {
  const text = inHours(minutes);
  return readHours(text || '0') === minutes ? text : `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

/** What the draft says, or what is wrong with it. */
export function readDraft(draft: QuoteDraft, currency: Currency): { changes: Change[]; errors: DraftErrors } {
  const say = words().costing.form;
  const errors: DraftErrors = {};
  const changes: Change[] = [{ route: draft.route }, draft.from.trim() ? { from: draft.from.trim() } : { clear: 'from' }];
  const cash = readMoney(draft.cash, currency);
  if (draft.cash.trim() && !cash) errors.cash = say.wrongMoney;
  const ownTime = readHours(draft.ownTime);
  if (draft.ownTime.trim() && ownTime === null) errors.ownTime = say.wrongHours;
  const chance = readNumber(draft.chance);
  if (draft.chance.trim() && (chance === null || chance < 0 || chance > 100)) errors.chance = say.wrongChance;
  const strip = readHours(draft.strip);
  if (draft.strip.trim() && strip === null) errors.strip = say.wrongHours;
  if (!draft.cash.trim() && !draft.ownTime.trim()) errors.cash = say.nothing;
  changes.push(...pair(cash && { cash }, 'cash', cash && { cash_certainty: draft.cashCertainty }, 'cash_certainty'));
  changes.push(...pair(ownTime !== null && { own_time: ownTime }, 'own_time', ownTime !== null && { own_time_certainty: draft.ownTimeCertainty }, 'own_time_certainty'));
  changes.push(...pair(chance !== null && { chance: Math.round(chance * 100) }, 'chance', chance !== null && { chance_certainty: draft.chanceCertainty }, 'chance_certainty'));
  changes.push(strip !== null ? { strip_again: strip } : { clear: 'strip_again' });
  return { changes, errors };
}

function pair(value: Change | false | null, field: FieldName, certainty: Change | false | null, certaintyField: FieldName): Change[] {
  return [value || { clear: field }, certainty || { clear: certaintyField }];
}

/** What was being entered when the page was ended. */
export function draftKept(key: string): QuoteDraft | null {
  try {
    const kept: unknown = JSON.parse(journal.typedBefore(key) ?? 'null');
    return isDraft(kept) ? kept : null;
  } catch {
    return null;
  }
}

function isDraft(kept: unknown): kept is QuoteDraft {
  return typeof kept === 'object' && kept !== null && Object.keys(emptyDraft('buy')).every((member) => typeof (kept as Record<string, unknown>)[member] === 'string');
}
