import { html, nothing, type TemplateResult } from 'lit';
import '../kit/row';
import '../kit/section';
import { words } from '../words';
import { count } from '../words/format';
import type { Bench } from './bench';
import { tagNumber } from './tag-number';

const SHOWN = 30;

/** On a desk there is room for what came off the assembly before. */
export function soFar(bench: Bench): TemplateResult | typeof nothing {
  const text = words().teardown;
  const parts = (bench.view?.parts ?? []).filter(({ struck }) => !struck);
  if (parts.length === 0) return nothing;
  return html`<div class="td-so-far" tabindex="-1"><asf-section .label=${text.soFar} .count=${count(parts.length, 'part')}>
    ${[...parts].reverse().slice(0, SHOWN).map((part) => html`<asf-row compact .number=${tagNumber(part.tag)} .standing=${part.standing} .marks=${{ missing: part.missing }}
      .name=${part.name || text.unnamedPart} .second=${part.place.join(', ')} .href=${`#/part/${part.id}`}></asf-row>`)}</asf-section></div>`;
}
