import type { Change, Currency, RecordView, Units } from '../../bridge/protocol';
import { massInUnit, massText } from '../sheet/mass';
import { words } from '../words';
import { minorDigits } from '../words/format';
import { readMoney, readNumber } from '../words/read';

/** A carriage as it is being typed. */
export type TierDraft = Record<'value' | 'mass' | 'carriage', string>;
export const EMPTY_TIER: TierDraft = { value: '', mass: '', carriage: '' };
// Fifty tonnes, as the record bounds it.
const MOST_GRAMS = 50_000_000;

export function tierDraft({ values }: RecordView, units: Units): TierDraft {
  const sum = (money: { minor: number; currency: string } | undefined): string => (money ? String(money.minor / 10 ** minorDigits(money.currency)) : '');
  return { value: sum(values.from_value), mass: values.from_mass === undefined ? '' : massText(values.from_mass, units), carriage: sum(values.shipping) };
}

/** What the draft says, or what is wrong with it: a carriage, and a value or a mass from which it holds. */
export function readTier(draft: TierDraft, currency: Currency, units: Units): { changes: Change[]; errors: Partial<TierDraft> } {
  const say = words().suppliers;
  const errors: Partial<TierDraft> = {};
  const changes: Change[] = [];
  const value = readMoney(draft.value, currency);
  if (draft.value.trim()) {
    if (value) changes.push({ from_value: value });
    else errors.value = say.wrong.money;
  } else changes.push({ clear: 'from_value' });
  const figure = readNumber(draft.mass);
  const grams = figure === null || figure < 0 ? null : massInUnit(figure, units);
  if (draft.mass.trim()) {
    if (grams !== null && grams <= MOST_GRAMS) changes.push({ from_mass: grams });
    else errors.mass = say.wrong.mass;
  } else changes.push({ clear: 'from_mass' });
  if (!draft.value.trim() && !draft.mass.trim()) errors.value = say.tier.needsFrom;
  const shipping = readMoney(draft.carriage, currency);
  if (shipping) changes.push({ shipping });
  else errors.carriage = say.wrong.money;
  return { changes, errors };
}
