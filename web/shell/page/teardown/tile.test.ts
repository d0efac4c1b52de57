import { expect, test, vi } from 'vitest';
import { isFresh, Tiles } from './tile.ts';

test('a tile is fresh for a moment once it is kept, wherever it is drawn anew meanwhile', () => {
  let now = 1000;
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  const tiles = new Tiles();
  tiles.add({ id: 'a', part: 'p', src: '', state: 'saving', again: () => undefined });
  expect(isFresh(tiles.find('a'))).toBe(false);
  tiles.set('a', { state: 'kept' });
  expect(isFresh(tiles.find('a'))).toBe(true);
  now += 100;
  tiles.set('a', { src: 'x' });
  expect(isFresh(tiles.find('a'))).toBe(true);
  now += 1000;
  expect(isFresh(tiles.find('a'))).toBe(false);
  expect(isFresh(undefined)).toBe(false);
});
