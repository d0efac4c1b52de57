import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './icon';
import './key';
import type { IconName } from './icon-drawings';
import { LightElement } from './light-element';

/** Every button that is not the primary one. With `href` it is a link of the same look. */
@customElement('asf-button')
export class Button extends LightElement {
  @property() word = '';
  @property() icon?: IconName;
  @property() key = '';
  @property() href?: string;
  /** Icon above the word; else beside it. */
  @property({ type: Boolean }) column = false;
  /** 48 px high, 32 on a desk: never for work with dirty hands. */
  @property({ type: Boolean }) compact = false;
  @property({ type: Boolean }) plain = false;
  @property({ type: Boolean }) disabled = false;
  /** 'true' or 'false' makes it a button that stays down. */
  @property() pressed?: 'true' | 'false';
  @property() kind: 'button' | 'submit' = 'button';
  /** A longer name for those who do not see the surroundings; it has to contain the word. */
  @property() label = '';

  override render(): TemplateResult {
    const look = ['second-button', this.column && 'second-button-column', this.compact && 'second-button-compact', this.plain && 'second-button-plain', this.pressed === 'true' && 'cut']
      .filter(Boolean).join(' ');
    const inside = html`${this.icon ? html`<asf-icon name=${this.icon}></asf-icon>` : nothing}<span>${this.word}</span>${
      this.key ? html`<asf-key class="key-end" name=${this.key}></asf-key>` : nothing}`;
    if (this.href !== undefined) return html`<a class="${look} second-link" href=${this.href} aria-label=${this.label || nothing}>${inside}</a>`;
    return html`<button type=${this.kind} class=${look} ?disabled=${this.disabled} aria-pressed=${this.pressed ?? nothing}
      aria-keyshortcuts=${this.key || nothing} aria-label=${this.label || nothing}>${inside}</button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-button': Button } }
