import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../kit/dialog';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/** All keys of the list. */
@customElement('asf-parts-keys')
export class PartsKeys extends LightElement {
  @property({ type: Boolean }) open = false;

  override render(): TemplateResult {
    const say = words().parts;
    const body = html`<dl class="keys">${say.keyList.map(([key, what]) => html`<div><dt><kbd class="key">${key}</kbd></dt><dd>${what}</dd></div>`)}</dl>`;
    return html`<asf-dialog .open=${this.open} .label=${say.keys} .body=${this.open ? body : nothing}></asf-dialog>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-parts-keys': PartsKeys } }
