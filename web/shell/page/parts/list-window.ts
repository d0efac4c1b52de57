/** Where rows and heads of a long list stand, so that only those in sight are drawn. */
export interface Heights { row: number; head: number }
export interface Run { count: number; from: number }

/** A stretch of one group that is drawn. */
export interface Stretch<G extends Run> { group: G; index: number; from: number; to: number; top: number; withHead: boolean }

/** Height of all. */
export function wholeHeight(groups: readonly Run[], { row, head }: Heights): number {
  const last = groups.at(-1);
  return last ? groups.length * head + (last.from + last.count) * row : 0;
}

/** Where a row stands. */
export function topOfRow(groups: readonly Run[], index: number, { row, head }: Heights): number {
  return (groupOf(groups, index) + 1) * head + index * row;
}

/** Number of the group that holds a row. */
export function groupOf(groups: readonly Run[], index: number): number {
  let [low, high] = [0, groups.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((groups[middle]?.from ?? 0) <= index) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The stretches that touch the band from `top` to `bottom`. */
export function stretches<G extends Run>(groups: readonly G[], top: number, bottom: number, heights: Heights): Stretch<G>[] {
  const { row, head } = heights;
  const found: Stretch<G>[] = [];
  for (let index = firstTouched(groups, top, heights); index < groups.length; index += 1) {
    const group = groups[index];
    if (!group) break;
    const start = index * head + group.from * row;
    if (start > bottom) break;
    const rows = start + head;
    const from = clamp(Math.floor((top - rows) / row), 0, group.count);
    const to = clamp(Math.ceil((bottom - rows) / row), 0, group.count);
    const withHead = from === 0;
    found.push({ group, index, from: group.from + from, to: group.from + to, top: withHead ? start : rows + from * row, withHead });
  }
  return found;
}

/** The first group whose end lies below `top`: by halving, since there may be thousands. */
function firstTouched(groups: readonly Run[], top: number, { row, head }: Heights): number {
  let [low, high] = [0, groups.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const group = groups[middle];
    const end = group ? (middle + 1) * head + (group.from + group.count) * row : Infinity;
    if (end < top) low = middle + 1;
    else high = middle;
  }
  return low;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
