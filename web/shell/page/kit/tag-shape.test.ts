import { expect, test } from 'vitest';
import { STANDINGS } from './standing';
import { CUT, figuresLength, hatch, inset, mirrored, path, tagOutline, tagWidth, type Point } from './tag-shape';

const area = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => { const [nx, ny] = points[(i + 1) % points.length] ?? [0, 0]; return sum + (x * ny - nx * y) / 2; }, 0);

test('four figures are 2.2 wide and set to 1.37; each further adds 0.34', () => {
  expect([tagWidth(4), tagWidth(5), tagWidth(6)].map((w) => w.toFixed(2))).toEqual(['2.20', '2.54', '2.88']);
  expect([figuresLength(4), figuresLength(5)].map((l) => l.toFixed(2))).toEqual(['1.37', '1.71']);
  expect(tagWidth(1)).toBe(2.2);
});

test('the plain tag is the card less its two cut corners', () => {
  expect(area(tagOutline('off', 2.2))).toBeCloseTo(2.2 - CUT * CUT, 10);
});

test('each standing but on, off, tried and ready has an outline of its own, inside the card', () => {
  const outlines = STANDINGS.map((standing) => path(tagOutline(standing, 2.2)));
  expect(new Set(outlines).size).toBe(6);
  for (const standing of STANDINGS) {
    for (const [x, y] of tagOutline(standing, 2.2)) {
      expect(x).toBeGreaterThanOrEqual(0); expect(x).toBeLessThanOrEqual(2.2);
      expect(y).toBeGreaterThanOrEqual(0); expect(y).toBeLessThanOrEqual(1);
    }
  }
});

test('one clip when judged, two when decided: each takes the same', () => {
  const plain = area(tagOutline('off', 2.2));
  const [one, two] = [plain - area(tagOutline('judged', 2.2)), plain - area(tagOutline('decided', 2.2))];
  expect(one).toBeGreaterThan(0.01);
  expect(two).toBeCloseTo(2 * one, 10);
});

test('a foreign tag turned twice is the tag', () => {
  const outline = tagOutline('order', 2.2);
  expect(mirrored(mirrored(outline, 2.2), 2.2).map(([x, y]) => [Number(x.toFixed(9)), y])).toEqual(outline.map(([x, y]) => [Number(x.toFixed(9)), y]));
  expect(area(mirrored(outline, 2.2))).toBeCloseTo(area(outline), 10);
});

test('the second rule keeps the same distance from every edge', () => {
  const inner = inset(tagOutline('off', 2.2), 0.1);
  const xs = inner.map(([x]) => x);
  const ys = inner.map(([, y]) => y);
  expect(Math.min(...xs)).toBeCloseTo(0.1, 10);
  expect(Math.max(...xs)).toBeCloseTo(2.1, 10);
  expect(Math.min(...ys)).toBeCloseTo(0.1, 10);
  // the upper cut: x + y = 0.27, seen at a right angle
  for (const [x, y] of inner.filter((point) => point[0] < 0.5 && point[1] < 0.5)) {
    expect((x + y - CUT) / Math.SQRT2).toBeGreaterThanOrEqual(0.1 - 1e-9);
  }
});

test('hatch lines rise at 45° and end on the outline', () => {
  const lines = hatch(tagOutline('tried', 2.2), 0.19);
  expect(lines.length).toBeGreaterThan(10);
  for (const [[x1, y1], [x2, y2]] of lines) {
    expect(x1 + y1).toBeCloseTo(x2 + y2, 10);
    for (const [x, y] of [[x1, y1], [x2, y2]] as const) {
      const off = Math.min(Math.abs(y), Math.abs(1 - y), Math.abs(2.2 - x), Math.abs(x), Math.abs(x + y - CUT), Math.abs(x + 1 - y - CUT));
      expect(off).toBeLessThan(1e-9);
    }
  }
});
