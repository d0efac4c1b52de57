import { html, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { textOf } from '../field-text';
import '../kit/icon';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/** In rows of four; the empty one rubs out. */
const KEYS = ['1', '2', '3', '', '4', '5', '6', 'X', '7', '8', '9', '0'] as const;
const MOST = 12;

/** Types the code on a tag: keys for gloves, or any keyboard. Tells `asf-code`. */
@customElement('asf-keypad')
export class Keypad extends LightElement {
  @state() private code = '';

  override render(): TemplateResult {
    const say = words().scan;
    return html`<form class="keypad" @submit=${this.submitted}>
      <label class="keypad-label" for="keypad-code">${say.code}<span class="unseen" id="keypad-hint">${say.codeHint}</span></label>
      <input class="keypad-code" id="keypad-code" .value=${this.code} inputmode="none" autocomplete="off" spellcheck="false" maxlength=${MOST} placeholder=${say.codeLike} aria-describedby="keypad-hint" @input=${(event: Event) => { this.code = textOf(event); }}>
      <div class="keypad-keys" role="group" aria-label=${say.keys}>${KEYS.map((key) => (key ? html`<button type="button" class="keypad-key" @click=${() => { this.press(key); }}>${key}</button>`
        : html`<button type="button" class="keypad-key" aria-label=${say.rub} @click=${() => { this.code = this.code.slice(0, -1); }}><asf-icon name="undo"></asf-icon></button>`))}</div>
      <asf-primary kind="submit" small .verb=${say.take} icon="check"></asf-primary></form>`;
  }

  override focus(options?: FocusOptions): void {
    this.querySelector<HTMLInputElement>('.keypad-code')?.focus(options);
  }

  private press(key: string): void {
    if (this.code.length < MOST) this.code += key;
  }

  private readonly submitted = (event: Event): void => {
    event.preventDefault();
    const code = this.code.trim();
    if (!code) return;
    this.code = '';
    this.tell<string>('asf-code', code);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-keypad': Keypad } }
