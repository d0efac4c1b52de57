import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';
import './stamp';
import type { Keeping } from './stamp';

/** A photo in a strip: square, its stamp in the lower right. With `opens` a button. */
@customElement('asf-photo')
export class Photo extends LightElement {
  @property() src = '';
  /** What it shows, for those who do not see it. */
  @property() label = '';
  @property() state?: Keeping;
  /** It became safe just now. */
  @property({ type: Boolean }) fresh = false;
  @property({ type: Boolean }) opens = false;
  @property({ type: Boolean }) current = false;

  override render(): TemplateResult {
    const inside = html`${this.src ? html`<img class="photo-image" src=${this.src} alt=${this.label} decoding="async">` : html`<span class="photo-image"></span>`}${
      this.state ? html`<asf-stamp class="photo-stamp" .state=${this.state} ?fresh=${this.fresh}></asf-stamp>` : nothing}`;
    return this.opens
      ? html`<button type="button" class="photo" aria-current=${this.current ? 'true' : nothing} aria-label=${this.src ? nothing : this.label}>${inside}</button>`
      : html`<span class="photo">${inside}</span>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-photo': Photo } }
