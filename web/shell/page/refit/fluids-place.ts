import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { backOf } from '../back-of';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/head';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import { words } from '../words';
import './fluids';

/** The fluids by themselves: put down while they run out, long before anything goes on again. */
@customElement('asf-fluids-place')
export class FluidsPlace extends LightElement {
  @property({ attribute: false }) address: Address | undefined;
  private readonly live = new Live(this, 'commissioning', () => ({ ask: 'commissioning' }));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const { view } = this.live;
    return html`<asf-head .name=${words().commissioning.fluids.title} .second=${words().commissioning.title} back=${backOf(this.address, '#/refit/commissioning')} .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body">${view ? html`<asf-fluids .fluids=${view.fluids} .vehicle=${view.vehicle} .units=${this.head.view?.settings.units ?? 'metric'}></asf-fluids>` : nothing}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-fluids-place': FluidsPlace } }
