import { expect, test } from 'vitest';
import type { FrontierPoint, FrontierView } from '../../bridge/protocol';
import { BASE, drawn, LEFT, RIGHT, ticks, TOP } from './frontier-lines';

const point = (limit: number, minor: number): FrontierPoint => ({
  limit, used: limit, cost: { minor, currency: 'GBP' }, bound: { minor, currency: 'GBP' }, cash: { minor: 0, currency: 'GBP' }, own_time: limit, proof: 'best',
});

test('figures at the sides are round and enclose what is drawn', () => {
  expect(ticks([610, 1710], 60)).toEqual([600, 900, 1200, 1500, 1800]);
  expect(ticks([83_640, 132_940], 100)).toEqual([80_000, 100_000, 120_000, 140_000]);
  expect(ticks([500, 500], 60)).toEqual([480, 510]);
});

test('a dearer plan stands higher, a larger limit further right, and all within the frame', () => {
  const view: FrontierView = { of: 'hours', currency: 'GBP', limit: 900, points: [point(600, 240_000), point(900, 210_000), point(1500, 200_000)], plan: point(880, 210_000), own: point(1000, 230_000) };
  const { points, plan, own, limit } = drawn(view);
  const [first, second, third] = points;
  expect(first?.x).toBeLessThan(second?.x ?? 0);
  expect(first?.y).toBeLessThan(third?.y ?? 0);
  expect(limit).toBe(second?.x);
  for (const { x, y } of [...points, plan, own].filter((one) => one !== undefined)) {
    expect(x).toBeGreaterThanOrEqual(LEFT);
    expect(x).toBeLessThanOrEqual(RIGHT);
    expect(y).toBeGreaterThanOrEqual(TOP);
    expect(y).toBeLessThanOrEqual(BASE);
  }
});

test('a limit beyond the drawing is not drawn', () => {
  expect(drawn({ of: 'hours', currency: 'GBP', limit: 90_000, points: [point(600, 1000), point(900, 900)] }).limit).toBeUndefined();
});
