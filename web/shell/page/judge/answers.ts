import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AskedView } from '../../bridge/protocol';
import '../kit/key';
import { LightElement } from '../kit/light-element';
import '../styles/judge.css';
import { checkWords } from './said';

/** The answers to one question, large, best first; on a desk by the keys 1, 2, 3 … Tells `asf-answer` with the code of the outcome. */
@customElement('asf-answers')
export class Answers extends LightElement {
  @property({ attribute: false }) asked?: AskedView;
  /** One on its way to be stored. */
  @property() putting = '';

  override render(): TemplateResult | typeof nothing {
    const { asked } = this;
    if (!asked) return nothing;
    const { outcomes, looksLike, ask } = checkWords(asked);
    const now = this.putting || asked.answer;
    return html`<div class="answers ${asked.outcomes.length > 3 ? 'answers-many' : ''}" role="group" aria-label=${ask}>${asked.outcomes.map(({ code }, i) => html`
      <button type="button" class="answer ${now === code ? 'cut answer-chosen' : ''}" aria-pressed=${now === code ? 'true' : 'false'} aria-keyshortcuts=${String(i + 1)} @click=${() => { this.tell('asf-answer', { outcome: code }); }}>
        <span class="answer-word">${outcomes[code] ?? code}${looksLike?.[code] ? html`<small>${looksLike[code]}</small>` : nothing}</span><asf-key class="key-end" name=${String(i + 1)}></asf-key></button>`)}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-answers': Answers } }
