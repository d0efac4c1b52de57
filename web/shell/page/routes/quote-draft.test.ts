import { expect, test } from 'vitest';
import { emptyDraft, readDraft } from './quote-draft';

const read = (draft: Partial<ReturnType<typeof emptyDraft>>) => readDraft({ ...emptyDraft('buy'), ...draft }, 'GBP');

test('one figure is enough, and what is empty is emptied', () => {
  const { changes, errors } = read({ cash: '£18.50' });
  expect(errors).toEqual({});
  expect(changes).toContainEqual({ cash: { minor: 1850, currency: 'GBP' } });
  expect(changes).toContainEqual({ cash_certainty: 'about' });
  expect(changes).toContainEqual({ clear: 'own_time' });
});

test('hours and chance are read as people write them', () => {
  const { changes } = read({ ownTime: '1:30', chance: '12,5', chanceCertainty: 'wild-guess', strip: '45 min' });
  expect(changes).toContainEqual({ own_time: 90 });
  expect(changes).toContainEqual({ chance: 1250 });
  expect(changes).toContainEqual({ chance_certainty: 'wild-guess' });
  expect(changes).toContainEqual({ strip_again: 45 });
});

test('nothing, or what cannot be meant, is refused at its field', () => {
  expect(read({}).errors.cash).toBeTruthy();
  expect(read({ cash: 'abc' }).errors.cash).toBeTruthy();
  expect(read({ cash: '5', chance: '101' }).errors.chance).toBeTruthy();
  expect(read({ ownTime: 'long' }).errors.ownTime).toBeTruthy();
});
