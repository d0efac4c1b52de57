import { expect, test } from 'vitest';
import type { RecordView } from '../../bridge/protocol';
import { EMPTY_TIER, readTier, tierDraft } from './tier-draft';

test('a carriage holds from a value or from a mass', () => {
  expect(readTier({ value: '100', mass: '', carriage: '5' }, 'GBP', 'metric')).toEqual({
    changes: [{ from_value: { minor: 10_000, currency: 'GBP' } }, { clear: 'from_mass' }, { shipping: { minor: 500, currency: 'GBP' } }], errors: {},
  });
  expect(readTier({ value: '', mass: '10', carriage: '24' }, 'GBP', 'inch').changes).toContainEqual({ from_mass: 4536 });
});

test('nothing, or what cannot be meant, is refused at its field', () => {
  expect(Object.keys(readTier(EMPTY_TIER, 'GBP', 'metric').errors)).toEqual(['value', 'carriage']);
  const { errors } = readTier({ value: 'much', mass: '-1', carriage: 'free' }, 'GBP', 'metric');
  expect(Object.keys(errors)).toEqual(['value', 'mass', 'carriage']);
});

test('what was put down is opened again as it was', () => {
  const tier = { values: { from_mass: 2500, shipping: { minor: 1250, currency: 'GBP' } } } as RecordView;
  expect(readTier(tierDraft(tier, 'metric'), 'GBP', 'metric').changes).toEqual([{ clear: 'from_value' }, { from_mass: 2500 }, { shipping: { minor: 1250, currency: 'GBP' } }]);
});
