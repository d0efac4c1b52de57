import { expect, test } from 'vitest';
import type { Values } from '../../bridge/protocol';
import { readTerm, TERMS, termSaid, termText, type Term } from './terms';

const read = (term: Term, text: string, values: Values = {}) => readTerm(term, text, 'GBP', values);

test('terms are read as people write them', () => {
  expect(read('shipping', '£9.50')).toEqual({ shipping: { minor: 950, currency: 'GBP' } });
  expect(read('free_from', '1,500')).toEqual({ free_from: { minor: 150_000, currency: 'GBP' } });
  expect(read('back_order', '12,5')).toEqual({ back_order: 1250 });
  expect(read('restocking', '15')).toEqual({ restocking: 1500 });
  expect(read('warranty', '24')).toEqual({ warranty: 24 });
  expect(read('return_window', ' 30 ')).toEqual({ return_window: 30 });
});

test('what is emptied is cleared', () => {
  for (const term of Object.keys(TERMS) as Term[]) expect(read(term, '  ')).toEqual({ clear: term });
});

test('what cannot be meant is refused', () => {
  for (const [term, text] of [['shipping', 'free'], ['back_order', '101'], ['restocking', '-1'], ['warranty', '0'], ['warranty', '2.5'], ['return_window', '2.5'], ['wait', '4000']] as const) expect(typeof read(term, text), text).toBe('string');
});

test('least and most stand around the usual wait', () => {
  expect(typeof read('wait_least', '9', { wait: 5 })).toBe('string');
  expect(typeof read('wait_most', '4', { wait: 5 })).toBe('string');
  expect(typeof read('wait_most', '2', { wait_least: 3 })).toBe('string');
  expect(typeof read('wait', '2', { wait_least: 3 })).toBe('string');
  expect(read('wait', '3', { wait: 9, wait_least: 3, wait_most: 3 })).toEqual({ wait: 3 });
  // The window for returns has nothing to do with the wait.
  expect(read('return_window', '1', { wait_least: 3 })).toEqual({ return_window: 1 });
});

test('what was put down is opened again as it was', () => {
  const values: Values = { shipping: { minor: 1999, currency: 'GBP' }, wait: 14, back_order: 1250, restocking: 1500, warranty: 24, tax_rate: 1750, duty_rate: 400 };
  for (const term of Object.keys(values) as Term[]) expect(read(term, termText(term, values))).toEqual({ [term]: values[term] });
  expect(termText('free_from', values)).toBe('');
});

test('terms are said with their units', () => {
  const said = (term: Term, values: Values): string => termSaid(term, values).replace(/\u00a0/g, ' ');
  expect(said('shipping', { shipping: { minor: 900, currency: 'GBP' } })).toBe('£9');
  expect(said('wait', { wait: 1 })).toBe('1 day');
  expect(said('warranty', { warranty: 24 })).toBe('24 months');
  expect(said('restocking', { restocking: 1500 })).toBe('15 %');
  expect(said('back_order', { back_order: 1000 })).toBe('10 in 100');
  expect(said('wait', {})).toBe('');
});
