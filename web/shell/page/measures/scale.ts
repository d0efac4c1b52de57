/** Where things stand on a number line that is `width` wide. */
export interface Scale {
  at: (amount: number) => number;
  ticks: readonly number[];
}

/** A line that shows all of these, with room at both ends, and three or four round ticks. `unit` is what the ticks are counted in. */
export function scaleOf(amounts: readonly number[], width: number, unit: number): Scale {
  const [low, high] = [Math.min(...amounts), Math.max(...amounts)];
  const room = (high - low || Math.abs(high) * 0.01 || unit) * 0.28;
  const [from, to] = [low - room, high + room];
  const step = roundStep((to - from) / unit / 3) * unit;
  const first = Math.ceil(from / step) * step;
  const ticks = Array.from({ length: Math.floor((to - first) / step) + 1 }, (_, i) => first + i * step);
  return { at: (amount) => ((amount - from) / (to - from)) * width, ticks };
}

/** The next of 1, 2, 5 times a power of ten. */
function roundStep(rough: number): number {
  const ten = 10 ** Math.floor(Math.log10(rough));
  const share = rough / ten;
  return ten * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
}
