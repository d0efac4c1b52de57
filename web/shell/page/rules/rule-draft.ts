import type { Change, Currency, Relation, RuleLine } from '../../bridge/protocol';
import { words } from '../words';
import { minorDigits } from '../words/format';
import { readMoney } from '../words/read';

export const RELATIONS: readonly Relation[] = ['needs', 'rules-out', 'goes-with'];

/** A rule as it is put together: two things, each perhaps one quote of it alone, and what is said of them. */
export type RuleDraft = Record<'subject' | 'subjectQuote' | 'relation' | 'other' | 'otherQuote' | 'price', string>;
export const EMPTY_RULE: RuleDraft = { subject: '', subjectQuote: '', relation: 'needs', other: '', otherQuote: '', price: '' };
export type RuleErrors = Partial<Record<'subject' | 'other' | 'price', string>>;

/** A rule that is there, to be changed. */
export function draftOfRule({ record, subject_part, other_part }: RuleLine): RuleDraft {
  const { of = '', other = '', relation = 'needs', cash } = record.values;
  const side = (id: string, part: string | undefined): [string, string] => (part ? [part, id] : [id, '']);
  const [subject, subjectQuote] = side(of, subject_part);
  const [second, otherQuote] = side(other, other_part);
  return { subject, subjectQuote, relation, other: second, otherQuote, price: cash ? String(cash.minor / 10 ** minorDigits(cash.currency)) : '' };
}

/** What the draft says, or what is wrong with it. */
export function readRule(draft: RuleDraft, currency: Currency): { changes: Change[]; errors: RuleErrors } {
  const say = words().rules.wrong;
  const errors: RuleErrors = {};
  const relation = RELATIONS.find((one) => one === draft.relation) ?? 'needs';
  const [of, other] = [draft.subjectQuote || draft.subject, draft.otherQuote || draft.other];
  if (!of) errors.subject = say.missing;
  if (!other) errors.other = say.missing;
  else if (of === other) errors.other = say.itself;
  const changes: Change[] = [{ of }, { relation }, { other }];
  if (relation === 'goes-with') {
    const cash = readMoney(draft.price, currency);
    if (cash) changes.push({ cash });
    else errors.price = say.money;
  }
  return { changes, errors };
}
