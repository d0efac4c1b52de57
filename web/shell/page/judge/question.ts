import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AskedView, InspectView } from '../../bridge/protocol';
import '../kit/photo';
import { LightElement } from '../kit/light-element';
import { Pictures } from '../pictures';
import '../styles/judge.css';
import { words } from '../words';
import { otherSideWord } from './findings';
import { answerWord, checkWords, familyName } from './said';

/** One question: what to look at, how, what the other side has, the photos that show it. Its answers are in `asf-answers`. */
@customElement('asf-judge-question')
export class JudgeQuestion extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  /** Which one, by its place in `asked`. */
  @property({ type: Number }) at = 0;
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult | typeof nothing {
    const asked = this.view?.asked[this.at];
    if (!this.view || !asked) return nothing;
    const { ask, how, small } = checkWords(asked);
    return html`<div class="judge-steps" aria-hidden="true">${this.view.asked.map((one, i) => html`<span class=${[one.answer ? 'judge-step-done' : '', i === this.at ? 'judge-step-now' : ''].join(' ')}></span>`)}</div>
      <h2 class="judge-ask" tabindex="-1"><span class="unseen">${words().judge.questionName(this.at + 1, this.view.asked.length)}. </span>${ask}</h2>
      ${how ? html`<p>${how}</p>` : nothing}
      ${this.beside(asked)}
      <p class="second least">${[familyName(this.view.family, this.view.own_families), small, asked.standard].filter(Boolean).join(' · ')}</p>
      ${this.photos(asked)}`;
  }

  private beside(asked: AskedView): TemplateResult | typeof nothing {
    if (!this.view?.other_side) return nothing;
    const say = words().judge;
    const side = otherSideWord(this.view);
    return html`<p class="judge-beside">${asked.other_side ? html`<b>${side}</b>: ${answerWord(asked, asked.other_side)}` : html`<span class="second">${say.otherSideOpen(side)}</span>`}</p>`;
  }

  private photos({ photos }: AskedView): TemplateResult | typeof nothing {
    const standing = photos.filter(({ record }) => !record.struck);
    if (standing.length === 0) return nothing;
    return html`<div class="judge-photos">${standing.map(({ record: { id, values } }, i) => html`<a href="#/photo/${id}" aria-label=${words().judge.photoOpen(i + 1)}><asf-photo .src=${this.pictures.small(values.blob ?? '')} state="kept"></asf-photo></a>`)}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-judge-question': JudgeQuestion } }
