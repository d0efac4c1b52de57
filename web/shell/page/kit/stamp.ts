import { html, nothing, svg, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';

export type Keeping = 'kept' | 'saving' | 'failed';

/** Solid with a tick only after the database has committed. Until then outlined with three dashes; a cross when it failed. */
@customElement('asf-stamp')
export class Stamp extends LightElement {
  @property({ reflect: true }) state: Keeping = 'saving';
  @property({ type: Number }) size = 24;
  /** It became safe just now: it is seen to come down. */
  @property({ type: Boolean }) fresh = false;
  /** Where a word beside it says the same. */
  @property({ type: Boolean }) quiet = false;

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.get('state') === 'saving' && this.state === 'kept') this.fresh = true;
  }

  override render(): TemplateResult {
    const say = words().kit;
    const label = { kept: say.kept, saving: say.saving, failed: say.failed }[this.state];
    const side = `${this.size / 16}rem`;
    return html`<svg class="stamp stamp-${this.state} ${this.fresh && this.state === 'kept' ? 'stamp-fresh' : ''}" viewBox="0 0 24 24" width=${side} height=${side} role=${this.quiet ? nothing : 'img'}
      aria-label=${this.quiet ? nothing : label} aria-hidden=${this.quiet ? 'true' : nothing}>${this.drawing()}</svg>`;
  }

  private drawing(): TemplateResult {
    if (this.state === 'failed') return svg`<path class="stamp-card" d="M1 1H23V23H1Z" /><path class="stamp-sign" d="M7 7L17 17M17 7L7 17" />`;
    const card = svg`<path class="stamp-card" d="M7 1H23V23H1V7Z" />`;
    return this.state === 'kept'
      ? svg`${card}<path class="stamp-sign" d="M5.8 12.4L10.2 17L18.6 7.6" />`
      : svg`${card}<path class="stamp-sign" d="M5 13H8.4M10.3 13H13.7M15.6 13H19" />`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-stamp': Stamp } }
