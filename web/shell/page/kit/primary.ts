import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './icon';
import './key';
import type { IconName } from './icon-drawings';
import { LightElement } from './light-element';

/** The next thing to do: one on a screen. Verb left; right what it costs, or its icon. */
@customElement('asf-primary')
export class Primary extends LightElement {
  @property() verb = '';
  @property() cost = '';
  @property() icon?: IconName;
  @property() key = '';
  @property({ type: Boolean }) small = false;
  @property({ type: Boolean }) disabled = false;
  @property() kind: 'button' | 'submit' = 'button';

  override render(): TemplateResult {
    return html`<button type=${this.kind} class="cut primary ${this.small ? 'primary-small' : ''}" ?disabled=${this.disabled}
      aria-keyshortcuts=${this.key || nothing}>
      <span class="primary-verb">${this.verb}</span>
      ${this.cost ? html`<span class="primary-cost">${this.cost}</span>` : nothing}
      ${this.icon ? html`<asf-icon name=${this.icon} size=${this.small ? '28' : '48'}></asf-icon>` : nothing}
      ${this.key ? html`<asf-key name=${this.key}></asf-key>` : nothing}
    </button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-primary': Primary } }
