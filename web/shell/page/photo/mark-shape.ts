import type { RecordView, Shape } from '../../bridge/protocol';

/** A ring or arrow in parts of ten thousand of the picture's width and height. */
export interface MarkShape { shape: Shape; x: number; y: number; dx: number; dy: number }

export const WHOLE = 10_000;

/** What a record says, with the size of a first tap where it says nothing. */
export function markOf({ values }: RecordView): MarkShape {
  return { shape: values.shape ?? 'ring', x: values.x ?? WHOLE / 2, y: values.y ?? WHOLE / 2, dx: values.dx ?? 900, dy: values.dy ?? 900 };
}

/** A mark put down by one tap; round on a picture of this breadth to height. */
export function markAt(shape: Shape, x: number, y: number, aspect: number): MarkShape {
  if (shape === 'ring') return { shape, x, y, dx: 900, dy: Math.round(900 * aspect) };
  // The tail points to where there is room.
  return { shape, x, y, dx: x > WHOLE / 2 ? -1400 : 1400, dy: (y > WHOLE / 2 ? -1 : 1) * Math.round(1100 * aspect) };
}

/** A mark drawn from one point to another: a ring from its middle outwards, an arrow from its tail to its tip. */
export function markDrawn(shape: Shape, from: readonly [number, number], to: readonly [number, number]): MarkShape {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return shape === 'ring'
    ? { shape, x: from[0], y: from[1], dx: Math.max(150, Math.abs(dx)), dy: Math.max(150, Math.abs(dy)) }
    : { shape, x: to[0], y: to[1], dx: -dx, dy: -dy };
}

/** Moved by shares, kept on the picture. */
export function moved(mark: MarkShape, by: readonly [number, number]): MarkShape {
  const clamp = (value: number): number => Math.min(WHOLE, Math.max(0, Math.round(value)));
  return { ...mark, x: clamp(mark.x + by[0]), y: clamp(mark.y + by[1]) };
}

export function resized(mark: MarkShape, factor: number): MarkShape {
  const limit = (value: number): number => Math.sign(value) * Math.min(WHOLE, Math.max(120, Math.round(Math.abs(value) * factor)));
  return { ...mark, dx: limit(mark.dx), dy: limit(mark.dy) };
}

/** An arrow turned by a quarter; a ring looks the same. */
export function turned(mark: MarkShape, aspect: number): MarkShape {
  return { ...mark, dx: Math.round(-mark.dy / aspect), dy: Math.round(mark.dx * aspect) };
}
