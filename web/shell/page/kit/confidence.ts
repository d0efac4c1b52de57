import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { CONFIDENCES, type Confidence } from '../words/confidence';
import './choice';
import { LightElement } from './light-element';

/** sure · about · wild guess. Tells `asf-change`. */
@customElement('asf-confidence')
export class ConfidenceChoice extends LightElement {
  @property() value: Confidence = 'about';
  @property() label = '';

  override render(): TemplateResult {
    const say = words().confidence;
    return html`<asf-choice columns="3" .label=${this.label || say.label} .options=${CONFIDENCES.map((value) => ({ value, word: say.word[value] }))} .value=${this.value}
      @asf-change=${(event: CustomEvent<{ value: Confidence }>) => { this.value = event.detail.value; }}></asf-choice>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-confidence': ConfidenceChoice } }
