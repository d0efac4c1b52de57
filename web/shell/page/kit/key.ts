import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';

/** A key drawn at the thing it acts on; seen only where a keyboard is likely. */
@customElement('asf-key')
export class Key extends LightElement {
  @property() name = '';
  /** The key leads nowhere now. */
  @property({ type: Boolean }) idle = false;

  override render(): TemplateResult {
    return html`<kbd class="key ${this.idle ? 'key-idle' : ''}" aria-hidden="true">${this.name}</kbd>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-key': Key } }
