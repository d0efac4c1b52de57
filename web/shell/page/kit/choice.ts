import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './icon';
import './key';
import type { IconName } from './icon-drawings';
import { LightElement } from './light-element';

export interface Option<T extends string = string> {
  value: T;
  word: string;
  second?: string;
  icon?: IconName;
  key?: string;
  disabled?: boolean;
}

let groups = 0;

/** One of several (radios), or some of several with `many` (check boxes). The chosen one is inked, its corners cut. */
@customElement('asf-choice')
export class Choice extends LightElement {
  @property({ attribute: false }) label: unknown = '';
  @property({ type: Boolean, attribute: 'hide-label' }) hideLabel = false;
  @property({ attribute: false }) options: readonly Option[] = [];
  @property() value = '';
  @property({ attribute: false }) values: readonly string[] = [];
  @property({ type: Boolean }) many = false;
  /** Tiles in a row on a phone; 0 lets them run on. */
  @property({ type: Number }) columns = 0;
  /** 48 px, 32 on a desk. */
  @property({ type: Boolean }) compact = false;

  private readonly group = `asf-choice-${++groups}`;

  override render(): TemplateResult {
    const tiles = `choice-tiles choice-${this.columns || 'run'}`;
    return html`<fieldset class="choice ${this.compact ? 'choice-compact' : ''}"><legend class=${this.hideLabel ? 'unseen' : 'choice-label'}>${this.label}</legend>
      <div class=${tiles}>${this.options.map((option) => this.tile(option))}</div></fieldset>`;
  }

  private tile({ value, word, second, icon, key, disabled = false }: Option): TemplateResult {
    const checked = this.many ? this.values.includes(value) : this.value === value;
    return html`<label class="choice-tile ${checked ? 'cut choice-chosen' : ''} ${disabled ? 'choice-not' : ''}">
      <input class="choice-input" type=${this.many ? 'checkbox' : 'radio'} name=${this.group} value=${value} .checked=${checked} ?disabled=${disabled}
        @change=${(event: Event) => { this.change(event, value); }}>
      ${icon ? html`<asf-icon name=${icon}></asf-icon>` : nothing}
      <span class="choice-word">${word}${second ? html`<small class="choice-second">${second}</small>` : nothing}</span>
      ${key ? html`<asf-key class="key-end" name=${key}></asf-key>` : nothing}</label>`;
  }

  private change(event: Event, value: string): void {
    // The group speaks for its inputs, once.
    event.stopPropagation();
    if (this.many) {
      this.values = this.values.includes(value) ? this.values.filter((one) => one !== value) : [...this.values, value];
      this.tell('asf-change', { value, values: this.values });
    } else {
      this.value = value;
      this.tell('asf-change', { value, values: [value] });
    }
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-choice': Choice } }
