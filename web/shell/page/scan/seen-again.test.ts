import { expect, test } from 'vitest';
import { OUT_OF_SIGHT_MS, SeenAgain } from './seen-again';

test('what stays in sight is taken once', () => {
  const seen = new SeenAgain();
  expect(seen.fresh(['0001X'], 0)).toEqual(['0001X']);
  for (let now = 80; now < 5_000; now += 80) expect(seen.fresh(['0001X'], now)).toEqual([]);
  // Frames in which it could not be read do not count as out of sight, until they are too many.
  expect(seen.fresh(['0001X'], 5_000 + OUT_OF_SIGHT_MS - 100)).toEqual([]);
  expect(seen.fresh(['0001X'], 7_000 + 2 * OUT_OF_SIGHT_MS)).toEqual(['0001X']);
});

test('others come into sight beside it', () => {
  const seen = new SeenAgain();
  expect(seen.fresh(['a'], 0)).toEqual(['a']);
  expect(seen.fresh(['a', 'b'], 100)).toEqual(['b']);
});
