import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import '../styles/pick.css';

let picks = 0;

/** One of many, in the device's own chooser, which is as large as the device makes it. Tells `asf-change`. */
@customElement('asf-pick')
export class Pick extends LightElement {
  @property() label = '';
  @property({ attribute: false }) options: readonly (readonly [value: string, word: string])[] = [];
  @property() value = '';
  @property() error = '';

  private readonly mark = `asf-pick-${++picks}`;

  override render(): TemplateResult {
    return html`<div class="field ${this.error ? 'field-wrong' : ''}"><label class="field-label" for=${this.mark}>${this.label}</label>
      <div class="field-box pick-box"><select class="pick" id=${this.mark} aria-invalid=${this.error ? 'true' : nothing} aria-describedby=${this.error ? `${this.mark}-error` : nothing} @change=${this.changed}>
        ${this.options.map(([value, word]) => html`<option value=${value} ?selected=${value === this.value}>${word}</option>`)}</select></div>
      <div role="alert" class="field-alert">${this.error ? html`<p class="field-error" id="${this.mark}-error"><asf-icon name="caution" size="20"></asf-icon>${this.error}</p>` : nothing}</div></div>`;
  }

  private readonly changed = (event: Event): void => {
    event.stopPropagation();
    if (!(event.target instanceof HTMLSelectElement)) return;
    this.value = event.target.value;
    this.tell('asf-change', { value: this.value });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-pick': Pick } }
