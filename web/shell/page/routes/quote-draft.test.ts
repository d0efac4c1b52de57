import { expect, test } from 'vitest';
import type { QuoteCost, StartingValues, Values } from '../../bridge/protocol';
import { draftOf, emptyDraft, readDraft, withStartingValues, type QuoteDraft } from './quote-draft';

const draft = (text: Partial<QuoteDraft['text']>, more: Partial<QuoteDraft> = {}): QuoteDraft => {
  const empty = emptyDraft('buy', 'GBP');
  return { ...empty, ...more, text: { ...empty.text, ...text } };
};
const read = (text: Partial<QuoteDraft['text']>, more: Partial<QuoteDraft> = {}) => readDraft(draft(text, more));

test('one figure is enough, and what is empty is emptied', () => {
  const { changes, errors } = read({ cash: '£18.50' });
  expect(errors).toEqual({});
  expect(changes).toContainEqual({ cash: { minor: 1850, currency: 'GBP' } });
  expect(changes).toContainEqual({ cash_certainty: 'about' });
  expect(changes).toContainEqual({ clear: 'own_time' });
});

test('figures are read as people write them', () => {
  const { changes } = read({ own_time: '1:30', chance: '12,5', strip_again: '45 min', life: '2.5', exchange_rate: '0,85', wait: '14' }, { how: { ...emptyDraft('buy', 'GBP').how, chance: 'wild-guess' } });
  for (const change of [{ own_time: 90 }, { chance: 1250 }, { chance_certainty: 'wild-guess' }, { strip_again: 45 }, { life: 30 }, { exchange_rate: 850_000 }, { wait: 14 }]) expect(changes).toContainEqual(change);
});

test('nothing, or what cannot be meant, is refused at its field', () => {
  expect(read({}).errors.cash).toBeTruthy();
  expect(read({ cash: 'abc' }).errors.cash).toBeTruthy();
  expect(read({ cash: '5', chance: '101' }).errors.chance).toBeTruthy();
  expect(read({ own_time: 'long' }).errors.own_time).toBeTruthy();
  expect(read({ cash: '5', life: '0' }).errors.life).toBeTruthy();
  expect(read({ cash: '5' }, { valid_until: 'soon' }).errors.valid_until).toBeTruthy();
});

test('least and most stand around the figure', () => {
  expect(read({ cash: '28', wait: '14', wait_least: '20', wait_most: '7' }).errors.wait_least).toBeTruthy();
  expect(read({ cash: '28', cash_least: '30' }).errors.cash_least).toBeTruthy();
  expect(read({ own_time: '2', own_time_most: '1:30' }).errors.own_time_most).toBeTruthy();
  expect(read({ cash: '28', life_least: '9', life_most: '4' }).errors.life_least).toBeTruthy();
  expect(read({ cash: '28', cash_least: '28', cash_most: '28', wait: '14', wait_least: '7', wait_most: '30' }).errors).toEqual({});
});

test('only what comes from a donor names one, and may cost nothing on top', () => {
  const { changes, errors } = read({}, { route: 'donor', vehicle: 'green' });
  expect(errors).toEqual({});
  expect(changes).toContainEqual({ vehicle: 'green' });
  expect(read({ cash: '5' }, { route: 'buy', vehicle: 'green' }).changes).toContainEqual({ clear: 'vehicle' });
  expect(read({}, { route: 'donor' }).errors.cash).toBeTruthy();
  const quote = { route: 'donor', record: { values: { vehicle: 'green', cash: { minor: 500, currency: 'GBP' } } } } as QuoteCost;
  expect(readDraft(draftOf(quote, 'GBP')).changes).toContainEqual({ vehicle: 'green' });
});

test('a quote that is opened and put down unchanged says what it said', () => {
  const values: Values = { cash: { minor: 1999, currency: 'EUR' }, freight: { minor: 250, currency: 'EUR' }, own_time: 100, chance: 333, strip_again: 7, life: 31, exchange_rate: 853_217, withheld: 1500, correctness: 'pattern', fails_at_bench: true, valid_until: '2026-05-01', wait: 3 };
  const quote = { route: 'exchange', record: { values } } as QuoteCost;
  const { changes, errors } = readDraft(draftOf(quote, 'GBP'));
  expect(errors).toEqual({});
  for (const [field, value] of Object.entries(values)) expect(changes).toContainEqual({ [field]: value });
});

test('what a new quote does not say is a starting value; what it says stays', () => {
  const starting: StartingValues = { route: 'buy', own_time: 15, chance: 500, strip_again: 120, life: 144 };
  const { changes } = read({ cash: '45', chance: '0' });
  const filled = withStartingValues(changes, starting);
  for (const change of [{ own_time: 15 }, { own_time_certainty: 'starting' }, { chance: 0 }, { life: 144 }]) expect(filled).toContainEqual(change);
  expect(filled).not.toContainEqual({ chance: 500 });
  expect(filled.some((change) => 'clear' in change)).toBe(false);
  expect(withStartingValues(changes, undefined)).not.toContainEqual({ own_time: 15 });
});

test('a price is for all of it or for one, never both', () => {
  const draft = { ...emptyDraft('send-out', 'GBP'), per: 'piece' as const };
  const typed = { ...draft, text: { ...draft.text, cash: '4.50' } };
  const { changes, errors } = readDraft(typed);
  expect(errors).toEqual({});
  expect(changes).toEqual(expect.arrayContaining([{ clear: 'cash' }, { rate: { minor: 450, currency: 'GBP' } }, { rate_basis: 'piece' }]));
  const all = readDraft({ ...typed, per: '' }).changes;
  expect(all).toEqual(expect.arrayContaining([{ cash: { minor: 450, currency: 'GBP' } }, { clear: 'rate' }, { clear: 'rate_basis' }]));
  expect(readDraft(draft).errors.cash).toBeTruthy();
});
