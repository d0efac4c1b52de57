import { html, type TemplateResult } from 'lit';
import type { Found, FoundIn, PartLine } from '../../bridge/protocol';

/** The text with the letters found in it marked. */
export function foundLetters(text: string, found: readonly Found[]): TemplateResult | string {
  const spans = found.filter((one) => one.text === text).sort((a, b) => a.from - b.from);
  if (spans.length === 0) return text;
  const pieces: (TemplateResult | string)[] = [];
  let at = 0;
  for (const { from, to } of spans) {
    if (from < at) continue;
    pieces.push(text.slice(at, from), html`<mark>${text.slice(from, to)}</mark>`);
    at = to;
  }
  pieces.push(text.slice(at));
  return html`${pieces}`;
}

export function foundWithin(line: PartLine, within: FoundIn): Found[] {
  return line.found.filter((one) => one.within === within);
}

/** A long note cut down to the neighbourhood of what was found. */
export function aroundFound(found: Found, most = 44): Found {
  const { text, from, to } = found;
  if (text.length <= most) return found;
  const before = Math.max(0, Math.floor((most - (to - from)) / 2));
  const start = Math.max(0, Math.min(from - before, text.length - most));
  const cut = text.slice(start, start + most);
  const lead = start > 0 ? '…' : '';
  return { ...found, text: lead + cut + (start + most < text.length ? '…' : ''), from: from - start + lead.length, to: to - start + lead.length };
}
