import { html, svg, type TemplateResult } from 'lit';
import { FIGURES_AT, HOLE_IN, RING, figuresLength, path, tagOutline, tagWidth } from '../kit/tag-shape';
import { tagNumber } from '../teardown/tag-number';
import type { Label, Sheet } from './labels';

/** White left around the tag inside its label, in millimetres: printers are not exact. */
const EDGE = 3.2;

/** One sheet, drawn in millimetres. */
export function drawnSheet(sheet: Sheet, labels: readonly Label[]): TemplateResult {
  return html`<svg class="ts-sheet" viewBox="0 0 ${sheet.width} ${sheet.height}" width="${sheet.width}mm" height="${sheet.height}mm" role="img"
    aria-label="${tagNumber(labels[0]?.number)} – ${tagNumber(labels[labels.length - 1]?.number)}">
    <rect class="ts-paper" width=${sheet.width} height=${sheet.height} />${labels.map((label) => drawn(sheet, label))}</svg>`;
}

function drawn(sheet: Sheet, { number, x, y }: Label): TemplateResult {
  const figures = tagNumber(number);
  const wide = tagWidth(figures.length);
  const { width, height } = sheet.label;
  const scale = Math.min((width - 2 * EDGE) / wide, height - 2 * EDGE) / 100;
  const left = x + (width - wide * scale * 100) / 2;
  const top = y + (height - scale * 100) / 2;
  // The hole is a mark to punch through, so only its ring is printed.
  return svg`<g transform="translate(${left} ${top}) scale(${scale})">
    <path class="ts-line" d=${path(tagOutline('off', wide))} />
    <circle class="ts-line" cx=${HOLE_IN * 100} cy="50" r=${RING * 100} />
    <text class="ts-figures" x=${FIGURES_AT * 100} y="72.4" font-size="63" textLength=${figuresLength(figures.length) * 100} lengthAdjust="spacingAndGlyphs">${figures}</text></g>`;
}
