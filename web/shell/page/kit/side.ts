import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import './key-plan';
import type { Corner } from './key-plan';
import { LightElement } from './light-element';

/** LEFT or RIGHT with the key plan: the plate hanging from the head on Teardown (`big`), small in other heads. */
@customElement('asf-side')
export class SideSign extends LightElement {
  @property({ reflect: true }) side: 'left' | 'right' = 'left';
  @property() end: 'front' | 'rear' | '' = '';
  @property() driver: 'left' | 'right' = 'right';
  @property({ type: Boolean, reflect: true }) big = false;

  override render(): TemplateResult {
    const at: Corner = this.end ? `${this.end}-${this.side}` : this.side;
    return html`<span class="side"><asf-key-plan .at=${at} .driver=${this.driver} .width=${this.big ? 40 : 29}></asf-key-plan>
      <b class="side-word">${words().sides[this.side]}</b></span>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-side': SideSign } }
