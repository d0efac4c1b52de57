import type { GearRow, Units } from '../../bridge/protocol';

/** Room of the drawing, in its own units. */
export const [WIDTH, HEIGHT, LEFT, RIGHT, TOP, BASE] = [360, 280, 34, 300, 14, 246] as const;
/** Names of lines stand at least this far apart. */
const APART = 15;

/** One line: a gear, from standing to the highest engine speed. */
export interface Line { row: GearRow; x: number; y: number; /** Where its name stands. */ name: number }

export interface Drawing {
  turns: readonly number[];
  speeds: readonly number[];
  x: (turns: number) => number;
  y: (speed: number) => number;
  before: readonly Line[];
  after: readonly Line[];
}

/** Road speed at 1000 turns, in the unit that is shown. */
export function per1000({ mph, kmh }: GearRow, units: Units): number {
  return units === 'inch' ? mph : kmh;
}

/** Both sets on one scale, up to `most` turns a minute. */
export function drawn(before: readonly GearRow[], after: readonly GearRow[], most: number, units: Units): Drawing {
  const fastest = Math.max(...[...before, ...after].map((row) => per1000(row, units))) * (most / 1000);
  const [turnsStep, speedStep] = [round(most / 4), round(fastest / 4)];
  const top = Math.ceil(fastest / speedStep - 1e-9) * speedStep;
  const x = (turns: number): number => LEFT + (turns / most) * (RIGHT - LEFT);
  const y = (speed: number): number => BASE - (speed / top) * (BASE - TOP);
  const lines = (rows: readonly GearRow[]): Line[] => spread(rows.map((row) => ({ row, x: x(most), y: y(per1000(row, units) * (most / 1000)), name: 0 })));
  return { turns: ticks(most, turnsStep), speeds: ticks(top, speedStep), x, y, before: lines(before), after: lines(after) };
}

/** Names beside the ends of their lines, pushed apart where they would meet; each stays in the drawing. */
function spread(lines: Line[]): Line[] {
  const up = [...lines].sort((one, other) => other.y - one.y);
  let last = Infinity;
  for (const line of up) {
    line.name = Math.min(line.y, last - APART);
    last = line.name;
  }
  // Whatever was pushed out at the top comes down again, and pushes the others with it.
  let above = TOP - APART;
  for (const line of up.reverse()) {
    line.name = Math.max(line.name, above + APART);
    above = line.name;
  }
  return lines;
}

function ticks(most: number, step: number): number[] {
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, i) => i * step);
}

/** The next of 1, 2, 2.5, 5 times a power of ten. */
function round(rough: number): number {
  const ten = 10 ** Math.floor(Math.log10(rough));
  const share = rough / ten;
  return ten * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 2.5 ? 2.5 : share <= 5 ? 5 : 10);
}
