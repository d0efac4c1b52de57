import { expect, test } from 'vitest';
import { mayComeFirst } from './goes-first';

const steps = [{ line: { id: 'hub' } }, { line: { id: 'seal' } }];
const allowed = (of: string): string[] => [{ id: 'hub', assembly: 'front' }, { id: 'cap', assembly: 'front' }, { id: 'seal' }, { id: 'rod', assembly: 'engine' }, { id: 'bolt' }]
  .filter((line) => mayComeFirst(line, of, 'front', steps)).map(({ id }) => id);

// Break: answer true.
test('an assembly goes on after no part of its own, a part of it after any', () => {
  expect(allowed('front')).toEqual(['rod', 'bolt']);
  expect(allowed('hub')).toEqual(['hub', 'cap', 'seal', 'rod', 'bolt']);
});
