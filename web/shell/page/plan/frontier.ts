import { html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Currency, FrontierPoint, FrontierView, PlanQuery, Scarce } from '../../bridge/protocol';
import '../kit/button';
import '../kit/choice';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { today } from '../today';
import { words } from '../words';
import { hours, money } from '../words/format';
import { Asked } from './asked';
import { BASE, drawn, HEIGHT, LEFT, RIGHT, TOP, WIDTH } from './frontier-lines';

/** What the whole job costs against the budget, or against the own hours: points joined, below them nothing is to be had. */
@customElement('asf-frontier')
export class Frontier extends LightElement {
  @property({ attribute: false }) query: PlanQuery = {};
  @property() currency: Currency = 'GBP';
  @state() private of: Scarce = 'hours';
  private readonly asked = new Asked(this, 'frontier');

  /** Another question is another answer: what is drawn would no longer hold. */
  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('query') && this.asked.state !== 'closed') void this.ask();
  }

  override render(): TemplateResult {
    const say = words().plan.frontier;
    const { view, state: found } = this.asked;
    if (found === 'closed') return html`<asf-section .label=${say.title}></asf-section><p class="second">${say.lead}</p><asf-button icon="chart" word=${say.open} @click=${() => { void this.ask(); }}></asf-button>`;
    return html`<asf-section .label=${say.title}></asf-section>
      <asf-choice compact columns="2" hide-label .label=${say.against} .options=${[{ value: 'hours', word: say.of.hours }, { value: 'cash', word: say.of.cash }]} .value=${this.of}
        @asf-change=${(event: CustomEvent<{ value: Scarce }>) => { this.of = event.detail.value; void this.ask(); }}></asf-choice>
      <div role="status">${found === 'failed' ? html`<p class="reckoned">${say.failed}</p>` : found === 'working' ? html`<p class="reckoned">${say.working}</p>` : nothing}
      ${view && view.of === this.of && found !== 'failed' ? this.told(view) : nothing}</div>`;
  }

  private async ask(): Promise<void> {
    await this.asked.ask({ ask: 'frontier', of: this.of, plan: { ...this.query, today: today() } });
  }

  private told(view: FrontierView): TemplateResult {
    const say = words().plan.frontier;
    if (view.points.length === 0) return html`<p><b>${say.nothing}</b></p>`;
    const { more, least } = view;
    const step = (amount: number): string => this.amount(view.of, amount);
    return html`${this.chart(view)}
      <p class="reckoned">${more ? (more.saves.minor > 0 ? html`${say.more(step(more.more))} <b>${say.saves(money(more.saves))}</b>${more.sure ? '.' : say.about}` : say.noMore(step(more.more))) : say.noLimit[view.of]}</p>
      ${least ? html`<p class="second">${say.least(step(least))}</p>` : nothing}
      <details class="quote-fold"><summary>${say.table}</summary><table class="plan-table"><thead><tr><th scope="col">${say.of[view.of]}</th><th scope="col">${say.cost}</th><th scope="col">${say.sure}</th></tr></thead>
        <tbody>${view.points.map((point) => html`<tr><th scope="row">${step(point.limit)}</th><td>${money(point.cost)}</td><td>${this.proof(point)}</td></tr>`)}</tbody></table></details>`;
  }

  private proof({ proof, cost, bound }: FrontierPoint): string {
    const say = words().plan.frontier;
    return proof === 'best' ? say.proved : say.notBelow(money({ ...cost, minor: bound.minor }));
  }

  private amount(of: Scarce, amount: number): string {
    return of === 'hours' ? hours(amount) : money({ minor: amount, currency: this.currency });
  }

  private chart(view: FrontierView): TemplateResult {
    const say = words().plan.frontier;
    const { points, x, y, plan, own, limit, costs, amounts } = drawn(view);
    const line = points.map(({ x: across, y: up }, at) => `${at === 0 ? 'M' : 'L'}${across} ${up}`).join('');
    const [first, last] = [points[0], points.at(-1)];
    const below = first && last ? `${line}V${BASE}H${first.x}Z` : '';
    const alt = say.says({ of: say.of[view.of], points: view.points.map((point) => ({ amount: this.amount(view.of, point.limit), cost: money(point.cost) })), plan: view.plan ? money(view.plan.cost) : '', own: view.own ? money(view.own.cost) : '' });
    return html`<figure class="frontier" role="img" aria-label=${alt}>
      <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" width="100%" aria-hidden="true" focusable="false">
        <defs><pattern id="frontier-hatch" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="fr-hatch" x1="0" y1="0" x2="0" y2="8"></line></pattern></defs>
        ${costs.map((cost) => svg`<line class="fr-grid" x1=${LEFT} y1=${y(cost)} x2=${RIGHT} y2=${y(cost)}></line><text class="fr-figure" x=${LEFT - 6} y=${y(cost) + 5} text-anchor="end">${money({ minor: cost, currency: this.currency }).replace(/[.,]00$/u, '')}</text>`)}
        ${amounts.map((amount) => svg`<line class="fr-tick" x1=${x(amount)} y1=${BASE} x2=${x(amount)} y2=${BASE + 6}></line><text class="fr-figure" x=${x(amount)} y=${BASE + 22} text-anchor="middle">${this.amount(view.of, amount).replace(/[.,]00$/u, '')}</text>`)}
        <path class="fr-below" d=${below}></path><path class="fr-base" d="M${LEFT} ${BASE}H${RIGHT}"></path>
        ${limit === undefined ? nothing : svg`<line class="fr-limit" x1=${limit} y1=${TOP} x2=${limit} y2=${BASE}></line>`}
        <path class="fr-line" d=${line}></path>${points.map(({ x: across, y: up }) => svg`<circle class="fr-point" cx=${across} cy=${up} r="4"></circle>`)}
        ${own ? svg`<rect class="fr-own" x=${own.x - 6} y=${own.y - 6} width="12" height="12"></rect>` : nothing}
        ${plan ? svg`<path class="fr-plan" d="M${plan.x} ${plan.y - 10}l10 10-10 10-10-10z"></path>` : nothing}
      </svg>
      <p class="frontier-key" aria-hidden="true"><span><svg width="20" height="20"><path class="fr-plan" d="M10 1l9 9-9 9-9-9z"></path></svg> ${say.plan}</span>${own ? html`<span><svg width="16" height="16"><rect class="fr-own" x="2" y="2" width="12" height="12"></rect></svg> ${say.own}</span>` : nothing}${limit === undefined ? nothing : html`<span><svg width="12" height="18"><line class="fr-limit" x1="6" y1="0" x2="6" y2="18"></line></svg> ${say.limit[view.of]}</span>`}<span><svg width="18" height="14"><rect width="18" height="14" fill="url(#frontier-hatch)"></rect></svg> ${say.below}</span></p></figure>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-frontier': Frontier } }
