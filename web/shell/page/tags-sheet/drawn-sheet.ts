import { html, svg, type TemplateResult } from 'lit';
import type { TagShape, TagSheetView } from '../../bridge/protocol';
import { words } from '../words';

/** A code as people read it: `0147-7`. */
export function readable(code: string): string {
  return `${code.slice(0, -1)}-${code.slice(-1)}`;
}

/** The first sheet, drawn from the same shapes as the file. */
export function drawnSheet({ grid, labels }: TagSheetView): TemplateResult {
  const [width, height] = grid.page;
  const [first, last] = [labels[0], labels[labels.length - 1]];
  const said = first && last ? words().tagsSheet.drawn(readable(first.code), readable(last.code), labels.length) : '';
  return html`<svg class="ts-sheet" viewBox="0 0 ${width} ${height}" role="img" aria-label=${said}>
    <rect class="ts-paper" width=${width} height=${height} />
    ${grid.strips ? '' : labels.map(({ x, y }) => svg`<rect class="ts-edge" x=${x} y=${y} width=${grid.label[0]} height=${grid.label[1]} rx="1.5" />`)}
    ${labels.flatMap(({ shapes }) => shapes).map(drawn)}</svg>`;
}

function drawn(shape: TagShape): TemplateResult {
  switch (shape.draw) {
    case 'line':
      return svg`<path class="ts-line" stroke-width=${shape.thick} stroke-dasharray=${shape.dashed ? '1.2' : 'none'} d="M${shape.points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}${shape.closed ? 'Z' : ''}" />`;
    case 'ring':
      return svg`<circle class="ts-line" stroke-width=${shape.thick} cx=${round(shape.x)} cy=${round(shape.y)} r=${shape.radius} />`;
    case 'text':
      return svg`<text class="ts-text" font-size=${shape.size} textLength=${round(shape.length)} lengthAdjust="spacingAndGlyphs"
        transform="translate(${round(shape.x)} ${round(shape.y)})${shape.turned ? ' rotate(180)' : ''}">${shape.text}</text>`;
    case 'dark':
      return svg`<path class="ts-dark" d=${shape.boxes.map(([x, y, width, height]) => `M${round(x)} ${round(y)}h${round(width)}v${round(height)}h${round(-width)}z`).join('')} />`;
  }
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
