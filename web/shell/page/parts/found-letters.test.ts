import { expect, test } from 'vitest';
import { aroundFound } from './found-letters';

const text = 'The inner bearing had turned on its seat and came off by hand without any heat at all';
const at = text.indexOf('turned');

test('a long note is cut to the neighbourhood of what was found, which stays marked', () => {
  const near = aroundFound({ within: 'note', text, from: at, to: at + 6 }, 30);
  expect(near.text.slice(near.from, near.to)).toBe('turned');
  expect(near.text.startsWith('…') && near.text.endsWith('…')).toBe(true);
  expect(near.text.length).toBeLessThanOrEqual(32);
});

test('a short note stays as it is; the ends carry no dots', () => {
  expect(aroundFound({ within: 'note', text: 'came off', from: 0, to: 4 }).text).toBe('came off');
  const last = aroundFound({ within: 'note', text, from: text.length - 3, to: text.length }, 20);
  expect(last.text.endsWith('all')).toBe(true);
  expect(last.text.slice(last.from, last.to)).toBe('all');
});
