import { expect, test } from 'vitest';
import { standingWord } from './tag-figures';

// Catches: "out for work" under the tag of what a friend has borrowed.
test('what is lent out is not out for work', () => {
  expect(standingWord({ standing: 'out', lent: true })).toBe('on loan');
  expect(standingWord({ standing: 'out' })).toBe('out for work');
  expect(standingWord({ standing: 'off', lent: false })).toBe('off');
});
