import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { words } from '../words';
import { currencySign } from '../words/format';
import './icon';
import type { IconName } from './icon-drawings';
import { LightElement } from './light-element';

export type FieldKind = 'text' | 'area' | 'number' | 'money' | 'hours' | 'day' | 'find';
let fields = 0;

/** A label above, a large input, a hint below; an error says what to do. Native `input` and `change` come through; `value` follows each stroke. */
@customElement('asf-field')
export class Field extends LightElement {
  @property() label = '';
  @property({ type: Boolean, attribute: 'hide-label' }) hideLabel = false;
  @property() kind: FieldKind = 'text';
  @property() value = '';
  @property() hint = '';
  @property() error = '';
  @property() unit = '';
  @property() currency = 'GBP';
  @property() name = '';
  @property() icon?: IconName;
  @property() placeholder = '';
  @property({ type: Number }) max = 0;
  @property({ attribute: false }) suggestions: readonly string[] = [];
  @property({ type: Boolean }) disabled = false;
  /** It was said that half a day is none. */
  @state() private half = false;

  /** Letters came that no `change` has told of. */
  private untold = false;
  private readonly mark = `asf-field-${++fields}`;

  /** Half a day stands in it: the browser gives none, or still the one before. */
  get isHalf(): boolean {
    return this.kind === 'day' && this.querySelector('input')?.validity.badInput === true;
  }

  /** Says that the day is not whole, and puts the cursor there. */
  async sayHalf(): Promise<void> {
    this.half = true;
    await this.updateComplete;
    this.querySelector('input')?.focus();
  }

  override render(): TemplateResult {
    const error = this.error || (this.half ? words().sheet.named.notADay : '');
    const about = [this.unitWord() && `${this.mark}-unit`, this.hint && `${this.mark}-hint`, error && `${this.mark}-error`].filter(Boolean).join(' ');
    return html`<div class="field ${error ? 'field-wrong' : ''}">
      <label class=${this.hideLabel ? 'unseen' : 'field-label'} for=${this.mark}>${this.label}</label>
      <div class="field-box">
        ${this.icon ? html`<asf-icon name=${this.icon}></asf-icon>` : nothing}
        ${this.kind === 'money' ? html`<span class="field-unit" aria-hidden="true">${currencySign(this.currency)}</span>` : nothing}
        ${this.kind === 'area' ? this.area(about, error) : this.input(about, error)}
        ${this.unitWord() ? html`<span class="field-unit" id="${this.mark}-unit">${this.unitWord()}</span>` : nothing}
      </div>
      ${this.hint ? html`<p class="field-hint" id="${this.mark}-hint">${this.hint}</p>` : nothing}
      <div role="alert" class="field-alert">${error ? html`<p class="field-error" id="${this.mark}-error"><asf-icon name="caution" size="20"></asf-icon>${error}</p>` : nothing}</div>
      ${this.suggestions.length ? html`<datalist id="${this.mark}-list">${this.suggestions.map((one) => html`<option value=${one}></option>`)}</datalist>` : nothing}
    </div>`;
  }

  private unitWord(): string {
    return this.unit || (this.kind === 'hours' ? 'h' : '');
  }

  private input(about: string, error: string): TemplateResult {
    const figures = this.kind === 'number' || this.kind === 'money';
    return html`<input class="field-input ${figures || this.kind === 'hours' ? 'field-figure' : ''}" id=${this.mark} name=${this.name || nothing}
      type=${this.kind === 'find' ? 'search' : this.kind === 'day' ? 'date' : 'text'} inputmode=${figures || this.kind === 'hours' ? 'decimal' : nothing} enterkeyhint=${this.kind === 'find' ? 'search' : 'done'}
      autocomplete="off" autocapitalize=${this.kind === 'text' ? 'sentences' : 'off'} spellcheck="false" maxlength=${this.max || nothing} placeholder=${this.placeholder || nothing}
      list=${this.suggestions.length ? `${this.mark}-list` : nothing} ?disabled=${this.disabled} .value=${this.value}
      aria-describedby=${about || nothing} aria-invalid=${error ? 'true' : nothing} @input=${this.follow} @change=${this.told} @keydown=${this.key}>`;
  }

  private area(about: string, error: string): TemplateResult {
    return html`<textarea class="field-input" id=${this.mark} name=${this.name || nothing} rows="3" maxlength=${this.max || nothing} ?disabled=${this.disabled} .value=${this.value}
      placeholder=${this.placeholder || nothing} aria-describedby=${about || nothing} aria-invalid=${error ? 'true' : nothing} @input=${this.follow}></textarea>`;
  }

  private follow(event: Event): void {
    const { target } = event;
    this.untold = true;
    this.half = false;
    // Drawn with nothing in it, the browser would take away the half that was typed: the day before stays the value.
    if (this.isHalf) return;
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) this.value = target.value;
  }

  // What was told at Enter is not told once more when the field is left.
  private told(event: Event): void {
    if (!this.untold) event.stopImmediatePropagation();
    this.untold = false;
  }

  // One engine tells of no change at Enter where a list of suggestions hangs on the field. Its own comes first where it comes.
  private key(event: KeyboardEvent): void {
    const { target } = event;
    if (event.key !== 'Enter' || event.isComposing || !(target instanceof HTMLInputElement)) return;
    setTimeout(() => { if (this.untold) target.dispatchEvent(new Event('change', { bubbles: true })); });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-field': Field } }
