import type { Standing } from './standing';

/** A corner; units are the height of the tag. */
export type Point = readonly [x: number, y: number];

export const CUT = 0.27;
export const RING = 0.16;
export const HOLE = 0.08;
export const HOLE_IN = 0.32;
export const FIGURES_AT = 0.62;
const FOUR_FIGURES = { width: 2.2, length: 1.37 };
const ONE_MORE = 0.34;

/** Width for a number of so many figures; fewer than four keep the width of four. */
export function tagWidth(figures: number): number {
  return FOUR_FIGURES.width + ONE_MORE * Math.max(0, figures - 4);
}

/** The length the figures are set to, so that they align in any face. */
export function figuresLength(figures: number): number {
  if (figures >= 4) return FOUR_FIGURES.length + ONE_MORE * (figures - 4);
  return (FOUR_FIGURES.length * figures) / 4;
}

/** The outline, hole end at the left, clockwise from the upper cut. */
export function tagOutline(standing: Standing, width: number): Point[] {
  return [[CUT, 0], ...freeEnd(standing, width), ...lowerEdge(standing, width), [CUT, 1], [0, 1 - CUT], [0, CUT]];
}

function freeEnd(standing: Standing, w: number): Point[] {
  if (standing === 'out') return [[w - 0.29, 0], [w, 0.5], [w - 0.29, 1]];
  if (standing === 'order') return [[w, 0], [w - 0.21, 0.5], [w, 1]];
  if (standing === 'refitted') return torn(w);
  return [[w, 0], [w, 1]];
}

function torn(w: number): Point[] {
  const inner = w - 0.13;
  return [[inner, 0], [w, 0.15], [inner, 0.3], [w, 0.5], [inner, 0.7], [w, 0.85], [inner, 1]];
}

function lowerEdge(standing: Standing, w: number): Point[] {
  if (standing === 'judged') return clip(w - 0.5);
  if (standing === 'decided') return [...clip(w - 0.35), ...clip(w - 0.62)];
  return [];
}

function clip(at: number): Point[] {
  return [[at + 0.1, 1], [at, 0.84], [at - 0.1, 1]];
}

/** A foreign tag faces the other way. */
export function mirrored(points: readonly Point[], width: number): Point[] {
  return points.map(([x, y]): Point => [width - x, y]).reverse();
}

/** The outline moved inwards by so much: the second rule of an irreplaceable part. */
export function inset(points: readonly Point[], by: number): Point[] {
  return points.map((corner, i): Point => {
    const before = at(points, i - 1);
    const after = at(points, i + 1);
    const [ax, ay] = inward(before, corner);
    const [bx, by2] = inward(corner, after);
    const share = by / (1 + ax * bx + ay * by2);
    return [corner[0] + (ax + bx) * share, corner[1] + (ay + by2) * share];
  });
}

function at(points: readonly Point[], i: number): Point {
  const point = points[(i + points.length) % points.length];
  if (!point) throw new RangeError('an outline has corners');
  return point;
}

// Clockwise on a screen whose y points down: the inside lies to the right of the way.
function inward([x1, y1]: Point, [x2, y2]: Point): Point {
  const length = Math.hypot(x2 - x1, y2 - y1);
  return [-(y2 - y1) / length, (x2 - x1) / length];
}

/** Lines rising at 45° across a convex outline, cut off at its edges. */
export function hatch(points: readonly Point[], gap: number): [Point, Point][] {
  const sums = points.map(([x, y]) => x + y);
  const lines: [Point, Point][] = [];
  for (let sum = Math.min(...sums) + gap; sum < Math.max(...sums); sum += gap) {
    const ends = crossings(points, sum);
    const [first, last] = [ends[0], ends[ends.length - 1]];
    if (first && last && first[0] !== last[0]) lines.push([first, last]);
  }
  return lines;
}

function crossings(points: readonly Point[], sum: number): Point[] {
  const found: Point[] = [];
  points.forEach((from, i) => {
    const to = at(points, i + 1);
    const [a, b] = [from[0] + from[1] - sum, to[0] + to[1] - sum];
    if (a * b >= 0) return;
    const share = a / (a - b);
    found.push([from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]);
  });
  return found.sort((a, b) => a[0] - b[0]);
}

/** As an SVG path, in hundredths of the height. */
export function path(points: readonly Point[]): string {
  return `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}Z`;
}

function round(value: number): number {
  return Math.round(value * 1000) / 10;
}
