import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';

/** Nothing here yet: what to do first. The button for it is written between the tags. */
@customElement('asf-empty')
export class Empty extends LightElement {
  @property({ attribute: false }) first: unknown = '';
  @property({ attribute: false }) then: unknown = '';

  override render(): TemplateResult {
    return html`<h2 class="empty-first">${this.first}</h2>${this.then ? html`<p class="reckoned">${this.then}</p>` : nothing}`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-empty': Empty } }
