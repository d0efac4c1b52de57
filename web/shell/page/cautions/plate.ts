import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Id } from '../../bridge/protocol';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { words } from '../words';

/** On the picture at the strip: how many cautions of the assembly nobody has read, and the way to them. Nothing once all were. */
@customElement('asf-caution-plate')
export class CautionPlate extends LightElement {
  @property({ attribute: false }) assembly: Id | undefined;
  private readonly live = new Live(this, 'cautions', () => (this.assembly ? { ask: 'cautions', step: 'take-apart', assembly: this.assembly } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (this.hasUpdated && changed.has('assembly')) this.live.anew();
  }

  override render(): TemplateResult | typeof nothing {
    const unread = (this.live.view?.cautions ?? []).filter(({ acknowledged }) => !acknowledged).length;
    if (unread === 0 || !this.assembly) return nothing;
    return html`<a class="td-caution" href=${`#/before/${this.assembly}`}><asf-icon name="caution"></asf-icon><span>${words().cautions.open(unread)}</span></a>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-caution-plate': CautionPlate } }
