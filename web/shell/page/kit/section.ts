import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { html as choose, literal } from 'lit/static-html.js';
import { LightElement } from './light-element';

/** A rule, the name of what follows, and its count, unit or source at the right. What follows is written between its tags. */
@customElement('asf-section')
export class Section extends LightElement {
  @property() label: unknown = '';
  @property() count: unknown = '';
  @property({ type: Number }) level: 2 | 3 = 2;

  override render(): TemplateResult {
    const heading = this.level === 3 ? literal`h3` : literal`h2`;
    return html`<div class="section-head">${choose`<${heading} class="section-label">${this.label}</${heading}>`}${
      this.count ? html`<span class="section-count">${this.count}</span>` : nothing}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-section': Section } }
