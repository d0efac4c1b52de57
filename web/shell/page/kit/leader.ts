import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';

/** What, leader dots, how much. With `opens` the figure is a button that shows its working. */
@customElement('asf-leader')
export class Leader extends LightElement {
  @property() label: unknown = '';
  @property() value: unknown = '';
  @property({ type: Boolean }) big = false;
  /** The sum under the others: a rule above it. */
  @property({ type: Boolean }) result = false;
  @property({ type: Boolean }) opens = false;
  @property({ type: Boolean }) open = false;

  override render(): TemplateResult {
    const inside = html`<span class="leader-label">${this.label}</span><span class="leader-dots" aria-hidden="true"></span><span class="leader-value">${this.value}</span>`;
    const look = `leader-row ${this.big ? 'leader-big' : ''} ${this.result ? 'leader-result' : ''}`;
    return this.opens
      ? html`<button type="button" class="${look} leader-opens" aria-expanded=${this.open ? 'true' : 'false'}>${inside}</button>`
      : html`<div class=${look}>${inside}</div>${nothing}`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-leader': Leader } }
