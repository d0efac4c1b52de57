import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';

/** The shutter: the one round thing, 128 px. */
@customElement('asf-shutter')
export class Shutter extends LightElement {
  @property({ type: Boolean }) disabled = false;
  @property() word = '';

  override render(): TemplateResult {
    return html`<button type="button" class="shutter" ?disabled=${this.disabled}><span class="shutter-ring"><span class="shutter-eye"></span>
      <span class="shutter-word">${this.word || words().kit.photo}</span></span></button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-shutter': Shutter } }
