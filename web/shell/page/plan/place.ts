import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { PartsGroup, Route, Sums, TotalsView } from '../../bridge/protocol';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import { ROUTES_IN_ORDER, routeWord } from '../routes/route-word';
import '../styles/plan.css';
import '../styles/routes.css';
import { today } from '../today';
import { words } from '../words';
import '../rules/breaches';
import './changed-part';
import './whole-job';
import { hours, listed, money, moneyRound, number } from '../words/format';

interface OfRoute { route: Route; count: number; sums: Sums }

/** What can be said of the plan today: sums over the quotes that are chosen. */
@customElement('asf-place-plan')
export class PlacePlan extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private routes: readonly OfRoute[] = [];
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly parts = new Live(this, 'parts', () => ({ ask: 'parts', group: 'route', count: 0 }));
  private readonly totals = new Live(this, 'totals', () => ({ ask: 'totals', today: today() }));
  private readonly keeping = new KeepingWord(this);
  private summed: readonly PartsGroup[] | undefined;

  override willUpdate(): void {
    const groups = this.parts.view?.groups;
    if (!groups || groups === this.summed) return;
    this.summed = groups;
    void this.sum(groups);
  }

  override render(): TemplateResult {
    const say = words().plan;
    const { view } = this.parts;
    return html`<asf-head .name=${say.title} .second=${this.head.view?.job.values.name ?? ''} .cells=${[this.keeping.cell]}></asf-head>
      <div class="body plan-body"><div class="columns"><div>${this.totals.view ? this.money(this.totals.view) : nothing}<asf-breaches></asf-breaches><asf-whole-job .currency=${this.totals.view?.cash.currency ?? 'GBP'} .aim=${this.head.view?.settings.aim ?? 'regular-road-use'}></asf-whole-job><asf-button class="plan-bought" icon="gauge" word=${words().gearing.link} href="#/gearing"></asf-button></div>
        <div>${view ? (view.sums.decided > 0 ? this.sums(view.sums, view.total) : this.empty(view.total)) : nothing}
        <p class="reckoned plan-today">${say.today}</p></div></div></div>`;
  }

  private empty(total: number): TemplateResult {
    const say = words().plan;
    const text = total === 0 ? say.noParts : say.none;
    return html`<asf-empty .first=${text.first} .then=${text.then}><asf-button icon=${total === 0 ? 'teardown' : 'parts'} word=${text.go} href=${total === 0 ? '#/teardown' : '#/parts'}></asf-button></asf-empty>`;
  }

  /** What the job comes to: decided, open, bought. */
  private money(totals: TotalsView): TemplateResult {
    const say = words().plan;
    const { decided, unpriced, open, quoted, cash, peak, own_time, present, open_present, guessed, spent, purchases } = totals;
    return html`${this.overtaken(totals)}
      <asf-section .label=${say.money} .count=${say.decided(decided, decided + open)}>
        <asf-leader big .label=${say.cashDecided} .value=${money(cash)}></asf-leader>
        ${peak.minor === cash.minor ? nothing : html`<asf-leader .label=${say.peak(words().trade.surcharge.toLowerCase())} .value=${money(peak)}></asf-leader>`}
        <asf-leader big .label=${say.ownTime} .value=${hours(own_time)}></asf-leader>
        <asf-leader .label=${say.worth} .value=${moneyRound(present)}></asf-leader>
        ${open > 0 ? html`<asf-leader .label=${say.openAt(open, quoted)} .value=${moneyRound(open_present)}></asf-leader><asf-button class="plan-bought" icon="route" word=${words().decide.link(open)} href="#/decide"></asf-button>` : nothing}
        ${unpriced > 0 ? html`<p class="reckoned">${say.unpriced(unpriced)}</p>` : nothing}
        ${guessed > 0 ? html`<p class="reckoned">${say.guessed(number(guessed * 100))}</p>` : nothing}
        <asf-leader .label=${html`<a href="#/bought">${say.spent(purchases.length)}</a>`} .value=${money(spent)}></asf-leader>
        <asf-button class="plan-bought" icon="add" word=${say.bought} href="#/bought?new"></asf-button></asf-section>`;
  }

  /** Decisions that another route has overtaken since. */
  private overtaken({ overtaken }: TotalsView): TemplateResult | typeof nothing {
    if (overtaken.length === 0) return nothing;
    const say = words().plan;
    return html`<asf-section .label=${say.changed} .count=${String(overtaken.length)}>${overtaken.map((part) => html`<asf-changed-part .of=${part}></asf-changed-part>`)}</asf-section>`;
  }

  private sums(sums: Sums, total: number): TemplateResult {
    const say = words().plan;
    const open = this.summed?.find(({ route }) => !route)?.count ?? 0;
    return html`<asf-section .label=${say.sums} .count=${say.decided(sums.decided, total)}>
        ${sums.cash.map((cash) => html`<asf-leader .label=${say.cash} .value=${money(cash)}></asf-leader>`)}
        <asf-leader .label=${say.ownTime} .value=${hours(sums.own_time)}></asf-leader>
        ${this.worth(sums)}
        <p class="second">${say.asChosen}</p></asf-section>
      <asf-section .label=${say.byRoute}>${this.routes.map(({ route, count, sums: of }) => html`<asf-leader .label=${html`${routeWord(route)} <span class="second">${say.openCount(count)}</span>`} .value=${cashAndTime(of)}></asf-leader>`)}
        ${open ? html`<asf-leader .label=${say.open} .value=${say.openCount(open)}></asf-leader>` : nothing}</asf-section>`;
  }

  private worth({ own_time }: Sums): TemplateResult | typeof nothing {
    const value = this.head.view?.settings.hour_value;
    if (!value || own_time === 0) return nothing;
    return html`<p class="reckoned">${words().plan.hourValue(hours(own_time), money(value), money({ ...value, minor: (own_time / 60) * value.minor }))}</p>`;
  }

  /** Each route by itself: the list sums over all that match. */
  private async sum(groups: readonly PartsGroup[]): Promise<void> {
    const found: OfRoute[] = [];
    for (const route of ROUTES_IN_ORDER) {
      const count = groups.find((group) => group.route === route)?.count;
      if (!count) continue;
      const view = await desk.ask({ ask: 'parts', route, count: 0 });
      if (view.view === 'parts') found.push({ route, count, sums: view.sums });
    }
    if (groups === this.summed) this.routes = found;
  }
}

function cashAndTime({ cash, own_time }: Sums): string {
  return [...(cash.length ? [listed(cash.map(money))] : []), ...(own_time > 0 ? [hours(own_time)] : [])].join(', ') || '–';
}

declare global { interface HTMLElementTagNameMap { 'asf-place-plan': PlacePlan } }
