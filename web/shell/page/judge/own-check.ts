import { html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/** Name in the journal of what was typed and not put down. */
export const ownCheckKey = (family: string): string => `judge/own-check/${family}`;

/** A question of one's own for every part of a family. Tells `asf-asked` with its text, `asf-back` when it is given up. */
@customElement('asf-own-check')
export class OwnCheck extends LightElement {
  /** Code or id of the family. */
  @property() family = '';
  @property() familyName = '';
  @state() private text = '';
  @state() private wrong = '';

  override connectedCallback(): void {
    super.connectedCallback();
    this.text = journal.typedBefore(ownCheckKey(this.family)) ?? '';
  }

  override firstUpdated(): void {
    this.querySelector('input')?.focus({ preventScroll: true });
  }

  override render(): TemplateResult {
    const say = words().judge.own;
    return html`<h2 class="judge-ask" tabindex="-1">${words().judge.addOwn}</h2>
      <form class="judge-form" @submit=${this.put}>
        <asf-field .label=${say.label} .hint=${say.hint(this.familyName)} .value=${this.text} .error=${this.wrong} max="300" @input=${(event: Event) => { this.text = textOf(event); this.wrong = ''; journal.typing(ownCheckKey(this.family), this.text); }}></asf-field>
        <asf-primary small kind="submit" icon="check" verb=${say.go}></asf-primary>
        <asf-button word=${say.back} @click=${() => { journal.typed(ownCheckKey(this.family)); this.tell('asf-back', null); }}></asf-button></form>`;
  }

  private readonly put = (event: Event): void => {
    event.preventDefault();
    const text = this.text.trim();
    if (text) this.tell('asf-asked', { text });
    else this.wrong = words().judge.own.needed;
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-own-check': OwnCheck } }
