import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/** Work under way: what, how far, and a way to stop it. Tells `asf-stop`. */
@customElement('asf-preparing')
export class Preparing extends LightElement {
  @property() what = '';
  @property({ type: Number }) done = 0;
  @property({ type: Number }) all = 0;
  @property({ type: Boolean }) stops = false;

  override render(): TemplateResult {
    const say = words().handOver;
    return html`<div class="preparing"><p role="status"><b>${this.what}</b> <span class="second">${say.progress(this.done, this.all)}</span></p>
      <progress class="preparing-bar" max=${Math.max(1, this.all)} .value=${this.all > 0 ? this.done : 0} aria-label=${this.what}></progress>
      ${this.stops ? html`<asf-button icon="close" word=${say.stop} @click=${() => { this.tell('asf-stop', null); }}></asf-button>` : nothing}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-preparing': Preparing } }
