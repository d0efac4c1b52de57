import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { StoredLine } from '../../bridge/protocol';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import { write } from '../sheet/write';
import { today } from '../today';
import { words } from '../words';

/** A part that is out of the house is in again today. */
@customElement('asf-in-again')
export class InAgain extends LightElement {
  @property({ attribute: false }) stored?: StoredLine;

  override render(): TemplateResult | typeof nothing {
    const out = this.stored?.out;
    if (!this.stored || !out) return nothing;
    const say = words().where.house;
    const name = this.stored.line.name || words().parts.noName;
    return html`<div class="pair store-settle"><asf-button icon="bring" word=${say.inAgain} label=${`${say.inAgain}: ${name}`} @click=${() => { void write(out, [{ arrived: today() }], say.inAgainDone(name)); }}></asf-button></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-in-again': InAgain } }
