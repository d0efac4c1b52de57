import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { InspectView } from '../../bridge/protocol';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { featureWords } from './said';

/** What is measured in a part, and where. */
@customElement('asf-measures')
export class Measures extends LightElement {
  @property({ attribute: false }) view?: InspectView;

  override render(): TemplateResult | typeof nothing {
    const measures = this.view?.measures ?? [];
    if (measures.length === 0) return nothing;
    const say = words().judge;
    return html`<asf-section .label=${say.measures} .count=${say.measuredOf(measures.length)}>
      <ul class="findings">${measures.map(({ feature, readings }) => {
        const { name, where } = featureWords(feature);
        return html`<li><asf-leader .label=${name} .value=${readings.length ? say.readings(readings.length) : html`<span class="second">${say.notMeasured}</span>`}></asf-leader>${where ? html`<p class="second">${where}</p>` : nothing}</li>`;
      })}</ul></asf-section>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-measures': Measures } }
