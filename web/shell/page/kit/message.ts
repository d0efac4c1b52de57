import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './icon';
import { LightElement } from './light-element';
import './stamp';

/** What happened, what is safe, what to do. Buttons are written between its tags. An alert interrupts a reader, a status waits. */
@customElement('asf-message')
export class Message extends LightElement {
  @property({ reflect: true }) kind: 'status' | 'alert' = 'status';
  @property({ attribute: false }) happened: unknown = '';
  @property({ attribute: false }) safe: unknown = '';
  @property({ attribute: false }) todo: unknown = '';

  override render(): TemplateResult {
    return html`<div class="message" role=${this.kind}>
      <asf-icon name=${this.kind === 'alert' ? 'proved-bad' : 'note'}></asf-icon>
      <div class="message-words"><p class="message-happened">${this.happened}</p>
      ${this.safe ? html`<p class="message-safe">${this.safe}</p>` : nothing}
      ${this.todo ? html`<p class="message-todo">${this.todo}</p>` : nothing}</div></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-message': Message } }
