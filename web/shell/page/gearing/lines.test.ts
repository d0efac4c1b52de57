import { expect, test } from 'vitest';
import type { GearRow } from '../../bridge/protocol';
import { BASE, drawn, LEFT, RIGHT, TOP } from './lines';

const rows = (axle: number, ratios: readonly number[]): GearRow[] => ratios.map((ratio, at) => ({ gear: at + 1, overdriven: false, top: at + 1 === ratios.length, ratio, overall: ratio * axle, mph: 67 / (ratio * axle), kmh: 108 / (ratio * axle) }));

test('both sets stand on one scale, each line ending at its speed', () => {
  const { before, after, x, y, speeds, turns } = drawn(rows(4.22, [3.94, 2.3, 1.49, 1]), rows(3.7, [3.94, 2.3, 1.49, 1]), 4800, 'inch');
  expect([x(0), x(4800), y(0)]).toEqual([LEFT, RIGHT, BASE]);
  expect(Math.min(...[...before, ...after].map((line) => line.y))).toBeGreaterThanOrEqual(TOP);
  for (const [at, line] of after.entries()) expect(line.y).toBeLessThan(before[at]?.y ?? 0);
  expect(y(speeds.at(-1) ?? 0)).toBeCloseTo(TOP);
  expect(turns[0]).toBe(0);
  expect([speeds.length, turns.length].every((count) => count >= 3 && count <= 7)).toBe(true);
});

test('names of lines never meet, in their order, within the drawing', () => {
  const { after } = drawn([], rows(4, [1.2, 1.19, 1.18, 1.17, 1.16, 1.15, 1.14]), 6000, 'metric');
  const names = after.map((line) => line.name);
  for (const [at, name] of names.entries()) {
    if (at) expect((names[at - 1] ?? 0) - name).toBeGreaterThanOrEqual(15 - 1e-9);
    expect(name).toBeGreaterThanOrEqual(TOP - 1e-9);
    expect(name).toBeLessThanOrEqual(BASE);
  }
});
