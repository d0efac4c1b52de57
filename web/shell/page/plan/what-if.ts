import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Aim, Currency, Id, PlanQuery, PlanView, Route, Settings } from '../../bridge/protocol';
import '../kit/button';
import '../kit/choice';
import '../kit/slider';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { ROUTES_IN_ORDER, routeWord } from '../routes/route-word';
import { AIMS } from '../settings/aims';
import { words } from '../words';
import { hours, money } from '../words/format';
import { slid, span, stagesOf, turnedQuery, type Turn } from './turn';

/** Other limits, prices of time, aims and sellers, tried out without being kept. It tells `asf-turn` what the plan is asked with. */
@customElement('asf-what-if')
export class WhatIf extends LightElement {
  @property({ attribute: false }) view: PlanView | undefined;
  @property() currency: Currency = 'GBP';
  @state() private turn: Turn = {};
  /** The most that was paid in each stage: a slider stays where it is while a plan becomes cheaper. */
  private readonly paid = new Map<number, number>();
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly suppliers = new Live(this, 'suppliers', () => ({ ask: 'suppliers' }));
  private readonly vehicles = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));

  override render(): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const settings = this.head.view?.settings;
    if (!settings) return nothing;
    const { turn } = this;
    const turned = Object.keys(turnedQuery(turn)).length > 0;
    return html`<details class="quote-fold plan-what-if"><summary>${say.whatIf}${turned ? html` <span class="second">${say.turned}</span>` : nothing}</summary>
      <p class="second">${say.whatIfLead}</p>
      ${this.slider('budget', say.budget, settings)}${this.slider('minutes', say.hours, settings)}${this.slider('hourValue', say.hourValue, settings)}${this.stages(settings)}
      <asf-choice compact columns="2" .label=${words().settings.aim} .options=${AIMS.map((aim) => ({ value: aim, word: words().settings.aims[aim] }))} .value=${turn.aim ?? settings.aim}
        @asf-change=${(event: CustomEvent<{ value: Aim }>) => { this.turnTo({ aim: event.detail.value }); }}></asf-choice>
      <asf-choice compact many columns="2" .label=${say.routes} .options=${ROUTES_IN_ORDER.map((route) => ({ value: route, word: routeWord(route) }))} .values=${ROUTES_IN_ORDER.filter((route) => !turn.noRoutes?.includes(route))}
        @asf-change=${(event: CustomEvent<{ values: Route[] }>) => { this.turnTo({ noRoutes: ROUTES_IN_ORDER.filter((route) => !event.detail.values.includes(route)) }); }}></asf-choice>
      ${this.sellers()}
      ${turned ? html`<asf-button compact word=${say.asSet} @click=${() => { this.turnTo({}, true); }}></asf-button>` : nothing}</details>`;
  }

  private slider(figure: 'budget' | 'minutes' | 'hourValue', label: string, settings: Settings): TemplateResult {
    const say = words().plan.whole;
    const { now, most, step } = slid(figure, settings, this.view);
    const at = this.turn[figure] ?? now;
    const told = (value: number): string => (figure === 'minutes' ? hours(value) : money({ minor: value, currency: settings.currency }));
    const isNone = figure !== 'hourValue' && this.turn[figure] === undefined && settings[figure === 'budget' ? 'budget' : 'own_hours'] === undefined;
    return html`<asf-slider .label=${label} max=${most} step=${step} .value=${Math.min(at, most)} .said=${isNone ? say.noLimit : told(at)} @asf-slide=${(event: CustomEvent<{ value: number }>) => { this.turnTo({ [figure]: event.detail.value }); }}></asf-slider>`;
  }

  /** A budget for each stage in which anything is ordered, once there are several. */
  private stages(settings: Settings): TemplateResult[] {
    const say = words().plan.whole;
    for (const [stage, paid] of stagesOf(this.view)) this.paid.set(stage, Math.max(paid, this.paid.get(stage) ?? 0));
    return [...this.paid].sort(([one], [other]) => one - other).map(([stage, paid]) => {
      const { most, step } = span(paid);
      const set = this.turn.stages?.[stage];
      const told = set === undefined ? say.noLimit : money({ minor: set, currency: settings.currency });
      return html`<asf-slider .label=${say.stageBudget(stage)} max=${most} step=${step} .value=${set ?? most} .said=${told} @asf-slide=${(event: CustomEvent<{ value: number }>) => { this.turnTo({ stages: { ...this.turn.stages, [stage]: event.detail.value } }); }}></asf-slider>`;
    });
  }

  /** Suppliers, specialists and donors, on and off. */
  private sellers(): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const named = (this.suppliers.view?.suppliers ?? []).filter(({ quotes }) => quotes > 0).map(({ record }) => ({ id: record.id, name: record.values.name ?? '' }));
    const donors = (this.vehicles.view?.vehicles ?? []).filter(({ values }) => values.donor).map(({ id, values }) => ({ id, name: values.name ?? '' }));
    const all = [...named, ...donors];
    if (all.length === 0) return nothing;
    const off = this.turn.without ?? [];
    return html`<asf-choice compact many .label=${say.sellers} .options=${all.map(({ id, name }) => ({ value: id, word: name }))} .values=${all.map(({ id }) => id).filter((id) => !off.includes(id))}
      @asf-change=${(event: CustomEvent<{ values: Id[] }>) => { this.turnTo({ without: all.map(({ id }) => id).filter((id) => !event.detail.values.includes(id)) }); }}></asf-choice>`;
  }

  private turnTo(turn: Turn, afresh = false): void {
    this.turn = afresh ? turn : { ...this.turn, ...turn };
    const query: PlanQuery = turnedQuery(this.turn);
    this.tell('asf-turn', { query });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-what-if': WhatIf } }
