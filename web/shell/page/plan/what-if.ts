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
import { slid, turnedQuery, type Turn } from './turn';

/** Other limits, prices of time, aims and sellers, tried out without being kept. It tells `asf-turn` what the plan is asked with. */
@customElement('asf-what-if')
export class WhatIf extends LightElement {
  @property({ attribute: false }) view: PlanView | undefined;
  @property() currency: Currency = 'GBP';
  @state() private turn: Turn = {};
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
      ${this.slider('budget', say.budget, settings)}${this.slider('minutes', say.hours, settings)}${this.slider('hourValue', say.hourValue, settings)}
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
