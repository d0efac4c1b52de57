import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Aim, PlanChoice, PlanQuery, PlanSums, PlanView } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { tagFigures } from '../parts/tag-figures';
import { routeWord } from '../routes/route-word';
import { AIMS } from '../settings/aims';
import { today } from '../today';
import { words } from '../words';
import { count, hours, money } from '../words/format';
import { Asked } from './asked';
import { differing } from './differing';

/** So many steps for the other aim: it is for comparing, and says how sure it is. */
const STEPS = 400;

/** The same job at two aims, side by side: what each comes to, and which parts go another way. */
@customElement('asf-two-aims')
export class TwoAims extends LightElement {
  @property({ attribute: false }) query: PlanQuery = {};
  @property({ attribute: false }) view: PlanView | undefined;
  /** The aim of the plan beside it. */
  @property() aim: Aim = 'regular-road-use';
  @state() private other: Aim | undefined;
  private readonly asked = new Asked(this, 'plan');

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if ((changed.has('query') || changed.has('aim')) && this.other) void this.ask(this.other);
  }

  override render(): TemplateResult | typeof nothing {
    const say = words().plan.aims;
    if (!this.view?.sums) return nothing;
    const { state: found } = this.asked;
    const others = AIMS.filter((aim) => aim !== this.aim);
    return html`<asf-section .label=${say.title}></asf-section><p class="second">${say.lead(words().settings.aims[this.aim])}</p>
      <asf-choice compact columns="2" .label=${say.other} .options=${others.map((aim) => ({ value: aim, word: words().settings.aims[aim] }))} .value=${this.other === this.aim ? '' : this.other ?? ''}
        @asf-change=${(event: CustomEvent<{ value: Aim }>) => { this.other = event.detail.value; void this.ask(event.detail.value); }}></asf-choice>
      <div role="status">${found === 'working' ? html`<p class="reckoned">${words().plan.whole.working}</p>` : found === 'failed' ? html`<p class="reckoned">${words().plan.whole.failed}</p>` : nothing}
      ${found === 'done' && this.other && this.asked.view ? this.beside(this.view, this.asked.view, this.other) : nothing}</div>`;
  }

  private beside(one: PlanView, other: PlanView, aim: Aim): TemplateResult {
    const say = words().plan.aims;
    const whole = words().plan.whole;
    const { sums } = other;
    if (!one.sums || !sums) return html`<p><b>${say.nothing(words().settings.aims[aim])}</b></p>`;
    const rows: [string, (of: PlanSums) => string][] = [[whole.worth, (of) => money(of.cost)], [whole.cash, (of) => money(of.cash)], [whole.ownTime, (of) => hours(of.own_time)], [whole.wait, (of) => count(of.wait, 'day')]];
    const parts = differing(one.choices, other.choices);
    const here = one.sums;
    return html`<table class="plan-table"><thead><tr><td></td><th scope="col">${words().settings.aims[this.aim]}</th><th scope="col">${words().settings.aims[aim]}</th></tr></thead>
      <tbody>${rows.map(([name, told]) => html`<tr><th scope="row">${name}</th><td>${told(here)}</td><td>${told(sums)}</td></tr>`)}</tbody></table>
      <p class="second">${other.proof === 'best' ? whole.best : whole.roughly}</p>
      ${parts.length ? html`<p><b>${say.differ(parts.length)}</b></p><ul class="plan-changes">${parts.map(({ one: here, other: there }) => html`<li><a class="plan-change" href="#/routes/${(here ?? there)?.part}"><b>${tagFigures((here ?? there)?.tag)} ${(here ?? there)?.name || words().parts.noName}</b>
        <span class="second">${say.turns(way(here), way(there))}</span></a></li>`)}</ul>` : html`<p>${say.same}</p>`}`;
  }

  private async ask(aim: Aim): Promise<void> {
    await this.asked.ask({ ask: 'plan', ...this.query, aim, today: today(), nodes: STEPS });
  }
}

function way(choice: PlanChoice | undefined): string {
  return choice ? [routeWord(choice.route), choice.from].filter(Boolean).join(', ') : words().plan.aims.none;
}

declare global { interface HTMLElementTagNameMap { 'asf-two-aims': TwoAims } }
