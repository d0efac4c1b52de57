import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AskedView, InspectView } from '../../bridge/protocol';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { answered, answerSaid, answerWord, checkWords } from './said';

/** Every question with its answer, here and on the other side. A tap tells `asf-question` with the code of the question. */
@customElement('asf-findings')
export class Findings extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  /** To read only. */
  @property({ type: Boolean }) still = false;

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view || view.asked.length === 0) return nothing;
    const say = words().judge;
    return html`<asf-section .label=${say.found} .count=${say.ofAnswered(answered(view), view.asked.length)}>
      <ul class="findings">${view.asked.map((one) => html`<li>${this.line(one)}</li>`)}</ul></asf-section>`;
  }

  private line(asked: AskedView): TemplateResult {
    const { name } = checkWords(asked);
    const said = answerSaid(asked) || words().judge.notAnswered;
    const value = asked.answer ? said : html`<span class="second">${said}</span>`;
    const leader = this.still ? html`<asf-leader .label=${name} .value=${value}></asf-leader>`
      : html`<button type="button" class="leader-row finding-opens" @click=${() => { this.tell('asf-question', { question: asked.question }); }}><span
        class="leader-label"><span class="unseen">${words().judge.changeAnswer} </span>${name}<span class="unseen">, </span></span><span class="leader-dots" aria-hidden="true"></span><span class="leader-value">${value}</span></button>`;
    return html`${leader}${this.beside(asked)}`;
  }

  private beside(asked: AskedView): TemplateResult | typeof nothing {
    if (!asked.other_side) return nothing;
    return html`<p class="second finding-beside">${words().judge.otherSide(otherSideWord(this.view), answerWord(asked, asked.other_side))}</p>`;
  }
}

/** LEFT or RIGHT of the part on the other side. */
export function otherSideWord(view: InspectView | undefined): string {
  const side = view?.other_side?.side;
  return side ? words().sides[side] : words().judge.otherWord;
}

declare global { interface HTMLElementTagNameMap { 'asf-findings': Findings } }
