import { expect, test } from 'vitest';
import { groupOf, stretches, topOfRow, wholeHeight } from './list-window';

const heights = { row: 10, head: 4 };
const groups = [{ from: 0, count: 3 }, { from: 3, count: 1 }, { from: 4, count: 100 }];

test('the whole is as high as its heads and rows', () => {
  expect(wholeHeight(groups, heights)).toBe(3 * 4 + 104 * 10);
  expect(wholeHeight([], heights)).toBe(0);
});

test('a row stands below the heads before it', () => {
  expect([0, 2, 3, 4].map((row) => topOfRow(groups, row, heights))).toEqual([4, 24, 38, 52]);
  expect([0, 2, 3, 4, 103].map((row) => groupOf(groups, row))).toEqual([0, 0, 1, 2, 2]);
});

test('only what touches the band is drawn, and each drawn row stands where reckoned', () => {
  for (let top = -30; top < 1100; top += 7) {
    for (const { index, from, to, top: at, withHead } of stretches(groups, top, top + 60, heights)) {
      expect(to - from).toBeLessThanOrEqual(8);
      expect(at).toBe(withHead ? topOfRow(groups, groups[index]?.from ?? 0, heights) - heights.head : topOfRow(groups, from, heights));
    }
  }
});

test('every row of the band is in some stretch', () => {
  for (let row = 0; row < 104; row += 1) {
    const top = topOfRow(groups, row, heights);
    expect(stretches(groups, top + 1, top + 9, heights).some(({ from, to }) => from <= row && row < to)).toBe(true);
  }
});
