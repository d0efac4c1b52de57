import { html, nothing, type TemplateResult } from 'lit';
import type { PlaceLine } from '../../bridge/protocol';
import '../kit/icon';
import { words } from '../words';
import { nameOf } from './place-chooser';

/** Places as rows: a box with a lid line, never a tag; name, kind and code; how many parts. */
export function placeList(lines: readonly PlaceLine[]): TemplateResult {
  const say = words().stores;
  return html`<ul>${lines.map((line) => html`<li><a class="store-row" href=${`#/stores/${line.record.id}`}><span class="store-box" aria-hidden="true">${line.parts_within}</span>
    <span class="store-name">${nameOf(line)}<span class="second">${secondOf(line)}</span></span>
    <span class="store-count">${say.parts(line.parts_within)}</span><asf-icon name="next" size="20"></asf-icon></a></li>`)}</ul>`;
}

function secondOf({ place_kind: kind, code }: PlaceLine): TemplateResult | typeof nothing {
  const say = words().stores;
  const pieces = [kind ? say.kinds[kind] : '', code ? say.tag(code) : ''].filter(Boolean);
  return pieces.length ? html`${pieces.join(', ')}` : nothing;
}
