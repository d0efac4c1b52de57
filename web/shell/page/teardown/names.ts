import { html, type TemplateResult } from 'lit';
import '../kit/choice';
import { say } from '../say';
import { words } from '../words';
import type { Bench } from './bench';
import { tagNumber } from './tag-number';

/** Likely names as tiles; beside them a new one can always be typed. */
export function nameChips(bench: Bench, other: () => void): TemplateResult {
  const text = words().teardown;
  const name = bench.isRecorded ? bench.view?.part?.line.name ?? '' : '';
  const { names } = bench;
  const choose = (value: string): void => {
    bench.write([{ name: value }], ({ ok }) => { if (ok) say(text.named(tagNumber(bench.tag), value)); });
  };
  return html`<div class="td-names">
    ${names.length > 0 ? html`<asf-choice class="td-choice" hide-label columns="2" .label=${text.names} .value=${name} .options=${names.map((value) => ({ value, word: value }))}
      @asf-change=${(event: CustomEvent<{ value: string }>) => { choose(event.detail.value); }}></asf-choice>` : ''}
    <asf-button class="td-name-it" icon="caption" word=${text.nameIt} @click=${other}></asf-button>
  </div>`;
}
