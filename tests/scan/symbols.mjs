// Labels as the app prints them, laid out by the reckoning worker's wasm.
import { readFileSync } from 'node:fs';

const { Copy, initSync, readFrame, tagsView } = await import(new URL('../../web/shell/pkg/reckon/reckon.js', import.meta.url));
initSync({ module: readFileSync(new URL('../../web/shell/pkg/reckon/reckon_bg.wasm', import.meta.url)) });

export { readFrame };

/** The label of a tag on A4: what stands in its QR, its measures, and where it is dark, in millimetres from its corner. */
export function labelOf(number) {
  const { grid, labels } = tagsView(new Copy(), { labels: { of: 'blank', from: number, count: 1 } });
  const [{ code, x: left, y: top, shapes }] = labels;
  const [width, height] = grid.label;
  const { boxes } = shapes.find(({ draw }) => draw === 'dark');
  const module = boxes[0][3];
  const edge = (at, pick) => pick(...boxes.map((box) => box[at]));
  const corner = [edge(0, Math.min) - left, edge(1, Math.min) - top];
  const rows = Array.from({ length: 21 }, () => new Uint8Array(21));
  for (const [x, y, wide] of boxes) {
    const [row, column] = [Math.round((y - top - corner[1]) / module), Math.round((x - left - corner[0]) / module)];
    rows[row].fill(1, column, column + Math.round(wide / module));
  }
  // Beside the QR what is printed there, roughly: the outline of the tag, and bars for its figures.
  const lines = shapes.filter(({ draw }) => draw === 'line').flatMap(({ points, thick }) => points.map((from, i) => ({ from, to: points[(i + 1) % points.length], thick })));
  const texts = shapes.filter(({ draw }) => draw === 'text');
  const isDark = (x, y) => {
    const [column, row] = [Math.floor((x - corner[0]) / module), Math.floor((y - corner[1]) / module)];
    if (column >= 0 && row >= 0 && column < 21 && row < 21) return rows[row][column] === 1;
    if (x < corner[0] + 22 * module) return false;
    const [px, py] = [x + left, y + top];
    if (lines.some(({ from, to, thick }) => beside(px, py, from, to) < thick / 2)) return true;
    const text = texts.find(({ x: begin, y: base, size, length }) => px > begin && px < begin + length && py < base && py > base - size * 0.72);
    return text !== undefined && (px - text.x) % (text.size * 0.56) < text.size * 0.3;
  };
  return { text: code, width, height, module, side: 21 * module, middle: [corner[0] + 10.5 * module, corner[1] + 10.5 * module], isDark };
}

function beside(x, y, [ax, ay], [bx, by]) {
  const [dx, dy] = [bx - ax, by - ay];
  const along = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - ax - along * dx, y - ay - along * dy);
}
