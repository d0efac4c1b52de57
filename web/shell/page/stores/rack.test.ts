import { expect, test, vi } from 'vitest';
import type { ShelfView } from '../../bridge/protocol';

vi.mock('../kit/light-element', () => ({ LightElement: class {} }));
vi.mock('lit/decorators.js', () => ({ customElement: () => () => undefined, property: () => () => undefined, state: () => () => undefined }));
vi.mock('../kit/button', () => ({}));

const { near, short } = await import('./rack');

test('a box shows what tells it from its neighbours', () => {
  expect(short('Box 07')).toBe('07');
  expect(short('Shelf A2')).toBe('A2');
  expect(short('Rack left 3b')).toBe('3b');
  // A name without figures is shown whole; so is one that is nothing but its figures.
  expect(short('Under the bench')).toBe('Under the bench');
  expect(short('07')).toBe('07');
  expect(short('Box 7 of 12')).toBe('Box 7 of 12');
  expect(short('')).toBe('');
});

const shelves = (n: number, here = -1): ShelfView[] =>
  Array.from({ length: n }, (_, i) => ({ id: `s${i}`, name: `Shelf ${i}`, boxes: [{ id: `b${i}`, name: `Box ${i}`, parts: 0, missing: 0, here: i === here }], loose: [] }));
const names = (some: readonly ShelfView[]): string[] => some.map(({ name }) => name.slice(6));

// Catches: three shelves of which the one that is shown is none.
test('the shelf of the place stands in the middle, at the ends as near as it goes', () => {
  expect(names(near(shelves(5), 's2'))).toEqual(['1', '2', '3']);
  expect(names(near(shelves(5), 's0'))).toEqual(['0', '1', '2']);
  expect(names(near(shelves(5), 's4'))).toEqual(['2', '3', '4']);
  expect(names(near(shelves(5, 3), 'a box within'))).toEqual(['2', '3', '4']);
  expect(names(near(shelves(2), 's1'))).toEqual(['0', '1']);
  // The rack itself: from its lowest shelf.
  expect(names(near(shelves(5), 'rack'))).toEqual(['0', '1', '2']);
});
