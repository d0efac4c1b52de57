import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { InspectView, Reason, Verdict } from '../../bridge/protocol';
import '../kit/icon';
import type { IconName } from '../kit/icon-drawings';
import '../kit/leader';
import { LightElement } from '../kit/light-element';
import '../styles/judge.css';
import { words } from '../words';
import { answerWord, checkWords, featureWords } from './said';

const ICONS: Record<Verdict, IconName> = { fit: 'proved', rework: 'rework', scrap: 'proved-bad', 'not-known': 'not-proved' };

/** What a part comes to, and why: worst first. `most`: how many reasons are shown; `bare`: the word alone with its sentence. */
@customElement('asf-verdict')
export class VerdictSaid extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  @property({ type: Number }) most = 99;

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const say = words().judge;
    const once = view.single_use;
    const reasons = view.reasons.filter(({ from }) => from !== 'single-use').slice(0, this.most);
    return html`<div class="verdict"><asf-icon name=${once ? 'route' : ICONS[view.verdict]} size="40"></asf-icon>
      <div class="verdict-words"><p class="verdict-word">${once ? say.once : say.verdict[view.verdict]}</p>
        <p class="reckoned">${this.sentence(view)}</p></div></div>
      ${reasons.length ? html`<ul class="verdict-reasons" aria-label=${say.reasons}>${reasons.map((reason) => html`<li><asf-leader .label=${saidOf(view, reason)} .value=${valueOf(view, reason)}></asf-leader></li>`)}</ul>` : nothing}`;
  }

  private sentence(view: InspectView): string {
    const say = words().judge;
    if (view.single_use) return say.singleUse;
    if (view.verdict !== 'not-known') return say.verdictMore[view.verdict];
    if (view.family === undefined) return say.noFamily;
    const skipped = view.asked.filter((one) => one.skipped).length;
    const open = view.asked.filter((one) => one.answer === undefined && !one.skipped).length;
    const said = [open > 0 && say.notLooked(open), skipped > 0 && say.skippedOnes(skipped)].filter(Boolean).join(' ');
    return said || (view.asked.length === 0 ? say.noQuestions : view.reasons.some(({ from }) => from !== 'measure') ? say.lookAgain : say.toMeasure);
  }
}

/** What a reason comes to in a word. */
function valueOf({ measures }: InspectView, { about, outcome, condition }: Reason): string {
  const say = words().measures;
  if (outcome !== 'not-measured') return words().judge.condition[condition];
  const measure = measures.find(({ feature }) => feature === about);
  // A reading without a limit is measured, and still proves nothing.
  return !measure?.readings.length ? say.none : measure.source === undefined ? say.noLimit : say.proved.nothing;
}

/** One reason in words: what was looked at, and what was seen there. */
export function saidOf(view: InspectView, { from, about, outcome }: Reason): string {
  const say = words().judge;
  switch (from) {
    case 'single-use': return say.singleUseReason;
    case 'triage': return say.firstWord(words().sheet.word.options[outcome as keyof ReturnType<typeof words>['sheet']['word']['options']]);
    case 'measure': return featureWords(about).name;
    case 'question': {
      const asked = view.asked.find(({ question }) => question === about) ?? { question: about };
      return `${checkWords(asked).name}: ${answerWord(asked, outcome)}`;
    }
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-verdict': VerdictSaid } }
