import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';

/** The next tag, upright: closes the part in hand and opens this one. */
@customElement('asf-next-tag')
export class NextTag extends LightElement {
  @property() number = '';
  @property({ type: Boolean }) disabled = false;

  override render(): TemplateResult {
    const say = words().kit;
    return html`<button type="button" class="cut next-tag" ?disabled=${this.disabled}>
      <svg class="next-tag-hole" viewBox="0 0 28 28" aria-hidden="true"><circle class="next-tag-ring" cx="14" cy="14" r="12.8" /><circle class="tag-hole" cx="14" cy="14" r="6.2" /></svg>
      <span class="next-tag-number">${this.number}</span><span class="next-tag-word">${say.nextTag}</span></button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-next-tag': NextTag } }
