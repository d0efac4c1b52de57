import { svg, nothing, type TemplateResult } from 'lit';
import type { MarkShape } from './mark-shape';

/** The part of a box that a picture fills, in its pixels. */
export interface Fill { left: number; top: number; width: number; height: number }

/** How a picture of this size covers a box, as `object-fit: cover` does. */
export function cover(box: readonly [number, number], picture: readonly [number, number]): Fill {
  const scale = Math.max(box[0] / picture[0], box[1] / picture[1]);
  const [width, height] = [picture[0] * scale, picture[1] * scale];
  return { left: (box[0] - width) / 2, top: (box[1] - height) / 2, width, height };
}

/** How it stands whole within the box, as `object-fit: contain` does. */
export function contain(box: readonly [number, number], picture: readonly [number, number]): Fill {
  const scale = Math.min(box[0] / picture[0], box[1] / picture[1]);
  const [width, height] = [picture[0] * scale, picture[1] * scale];
  return { left: (box[0] - width) / 2, top: (box[1] - height) / 2, width, height };
}

/** Whether covering the box would cut away more than half of the picture. */
export function losesHalf(box: readonly [number, number], picture: readonly [number, number]): boolean {
  const [wide, high] = [box[0] / picture[0], box[1] / picture[1]];
  return Math.min(wide, high) / Math.max(wide, high) < 0.5;
}

/** Rings and arrows with their numbers, drawn over a picture and never into it. */
export function marksLayer(marks: readonly MarkShape[], fill: Fill, live = -1): TemplateResult {
  return svg`${marks.map((mark, i) => svg`<g class=${i === live ? 'mark-live' : ''}>${one(mark, i + 1, fill)}</g>`)}`;
}

function one(mark: MarkShape, number: number, fill: Fill): TemplateResult {
  const at = (x: number, y: number): [number, number] => [fill.left + (x / 10_000) * fill.width, fill.top + (y / 10_000) * fill.height];
  const [x, y] = at(mark.x, mark.y);
  const [rx, ry] = [(Math.abs(mark.dx) / 10_000) * fill.width, (Math.abs(mark.dy) / 10_000) * fill.height];
  if (mark.shape === 'ring') {
    // The call-out leaves at the upper right, or where there is room.
    const [right, up] = [x + rx + 46 < fill.left + fill.width ? 1 : -1, y - ry - 30 > fill.top ? -1 : 1];
    const [ex, ey] = [x + right * rx * 0.707, y + up * ry * 0.707];
    const disc: [number, number] = [ex + right * 40, ey + up * 24];
    const path = `M${ex} ${ey}L${ex + right * 18} ${ey + up * 24}H${disc[0]}`;
    return svg`${twice((look) => svg`<ellipse class=${look} cx=${x} cy=${y} rx=${rx} ry=${ry} /><path class=${look} d=${path} />`)}${figure(number, disc)}`;
  }
  const tail = at(mark.x + mark.dx, mark.y + mark.dy);
  return svg`${twice((look) => svg`<path class=${look} d="M${tail[0]} ${tail[1]}L${x} ${y}" />`)}${tip([x, y], tail)}${figure(number, tail)}`;
}

/** First dark and wide, then white: it stands out on any photo. */
function twice(draw: (look: string) => TemplateResult): TemplateResult {
  return svg`${draw('mark-under')}${draw('mark-line')}`;
}

function tip([x, y]: [number, number], tail: readonly [number, number]): TemplateResult | typeof nothing {
  const length = Math.hypot(tail[0] - x, tail[1] - y);
  if (length < 1) return nothing;
  const [ux, uy] = [(tail[0] - x) / length, (tail[1] - y) / length];
  const foot = [x + ux * 16, y + uy * 16] as const;
  return svg`<path class="mark-tip" d="M${x} ${y}L${foot[0] - uy * 7} ${foot[1] + ux * 7}L${foot[0] + uy * 7} ${foot[1] - ux * 7}Z" />`;
}

function figure(number: number, [x, y]: readonly [number, number]): TemplateResult {
  return svg`<circle class="mark-disc" cx=${x} cy=${y} r="12" /><text class="mark-figure" x=${x} y=${y + 5} text-anchor="middle">${number}</text>`;
}
