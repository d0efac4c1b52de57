import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Command, StoredLine } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { carryOut } from '../carry-out';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/** What a count found amiss is put right here: found after all, laid here for good, or back where it belongs. */
@customElement('asf-settle')
export class Settle extends LightElement {
  @property({ attribute: false }) stored?: StoredLine;
  @property() place = '';
  @property() name = '';

  override render(): TemplateResult | typeof nothing {
    const { stored: part } = this;
    if (!part) return nothing;
    const say = words().stores.settle;
    const { line } = part;
    const name = line.name || words().parts.noName;
    const label = (word: string): string => `${word}: ${name}`;
    if (part.counted !== 'foreign') {
      return html`<div class="pair store-settle"><asf-button icon="check" word=${say.found} label=${label(say.found)} @click=${() => { void carryOut(seen(line.id, part.place ?? this.place), say.foundDone(name)); }}></asf-button>
        <asf-button icon="find" word=${words().stores.whereIsIt} label=${label(words().stores.whereIsIt)} href=${openedFrom(`#/where/${line.id}`, `stores/${this.place}`)}></asf-button></div>`;
    }
    const belongs = line.place.at(-1) ?? '';
    const back = part.place;
    return html`<div class="pair store-settle"><asf-button icon="place" word=${say.laid} label=${label(say.laid)} @click=${() => { void carryOut({ do: 'change', ids: [line.id], changes: [{ place: this.place }] }, say.laidDone(name, this.name)); }}></asf-button>
      ${back ? html`<asf-button icon="undo" word=${say.back(belongs)} label=${label(say.back(belongs))} @click=${() => { void carryOut(seen(line.id, back), say.backDone(name, belongs)); }}></asf-button>` : nothing}</div>`;
  }
}

/** Somebody saw a part in a place, now. */
export function seen(part: string, place: string): Command {
  return { do: 'create', id: newId(), kind: 'sighting', changes: [{ of: part }, { place }, { taken: Date.now() }] };
}

declare global { interface HTMLElementTagNameMap { 'asf-settle': Settle } }
