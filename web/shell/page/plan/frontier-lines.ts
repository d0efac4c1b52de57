import type { FrontierView } from '../../bridge/protocol';

/** The drawing's own units. */
export const [WIDTH, HEIGHT, LEFT, RIGHT, TOP, BASE] = [480, 260, 66, 464, 14, 226] as const;

interface Point { x: number; y: number }

export interface FrontierDrawing {
  points: readonly Point[];
  plan: Point | undefined;
  own: Point | undefined;
  /** Where the limit stands across; nothing where there is none, or it is beyond the drawing. */
  limit: number | undefined;
  /** Costs and amounts that are written at the sides. */
  costs: readonly number[];
  amounts: readonly number[];
  x: (amount: number) => number;
  y: (cost: number) => number;
}

/** A frontier in the drawing's units: all that is told is in it, with a little room around. */
export function drawn(view: FrontierView): FrontierDrawing {
  const of = [...view.points, ...[view.plan, view.own].filter((point) => point !== undefined)];
  const hour = view.of === 'hours' ? 60 : 100;
  const across = ticks(of.map(({ used, limit }, at) => (at < view.points.length ? limit : used)), hour);
  const up = ticks(of.map(({ cost }) => cost.minor), 100);
  const x = scale(across, LEFT, RIGHT);
  const y = scale(up, BASE, TOP);
  const at = (amount: number, minor: number): Point => ({ x: round(x(amount)), y: round(y(minor)) });
  const inside = view.limit !== undefined && x(view.limit) >= LEFT && x(view.limit) <= RIGHT;
  return {
    points: view.points.map(({ limit, cost }) => at(limit, cost.minor)),
    plan: view.plan && at(view.plan.used, view.plan.cost.minor),
    own: view.own && at(view.own.used, view.own.cost.minor),
    limit: inside && view.limit !== undefined ? round(x(view.limit)) : undefined,
    costs: up, amounts: across, x, y,
  };
}

/** Round figures from below the least to above the greatest, four to six of them. */
export function ticks(values: readonly number[], unit: number): number[] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const wanted = Math.max((most - least) / 4, unit / 2) / unit;
  const ten = 10 ** Math.floor(Math.log10(wanted));
  const step = ([1, 2, 2.5, 5, 10].map((one) => one * ten).find((one) => one >= wanted) ?? ten * 10) * unit;
  const first = Math.floor(least / step);
  return Array.from({ length: Math.ceil(most / step) - first + 1 }, (_, at) => (first + at) * step);
}

function scale(of: readonly number[], from: number, to: number): (value: number) => number {
  const [least, most] = [of[0] ?? 0, of.at(-1) ?? 1];
  return (value) => from + ((value - least) / Math.max(most - least, 1)) * (to - from);
}

const round = (at: number): number => Math.round(at * 10) / 10;
