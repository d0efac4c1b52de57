import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Collides, Command, Currency, PlanChoice, PlanOrder, PlanQuery, PlanView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/field';
import '../kit/leader';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { tagFigures } from '../parts/tag-figures';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { count, hours, money, number } from '../words/format';
import { readHours, readMoney } from '../words/read';
import { Whole } from './whole';

/** As many changes as are told at first. */
const TOLD = 4;

/** The cheapest set of routes for all parts together: what it comes to, how sure that is, what it would change, and why. */
@customElement('asf-whole-job')
export class WholeJob extends LightElement {
  @property() currency: Currency = 'GBP';
  @state() private typed = { budget: '', hours: '' };
  @state() private errors: { budget?: string; hours?: string } = {};
  @state() private all = false;
  private turn: PlanQuery = { without_limits: false };
  private readonly whole = new Whole(this, () => this.turn);

  override render(): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const { view, working, failed } = this.whole;
    if (view && view.choices.length === 0 && view.collide.length === 0 && view.proof !== 'open') return nothing;
    return html`<asf-section .label=${say.title} .count=${view?.sums ? say.parts(view.choices.length) : ''}>
      <div role="status">${view ? this.told(view) : nothing}<p class="reckoned">${failed ? say.failed : working && view?.proof !== 'best' ? (view ? say.improving : say.working) : nothing}</p></div>
      ${view ? this.changes(view) : nothing}${this.whatIf(view)}</asf-section>
      ${view?.orders.length ? html`<asf-section .label=${say.orders}>${view.orders.map((order) => this.order(order))}</asf-section>` : nothing}
      ${view?.kits.length || view?.donors.length ? this.shared(view) : nothing}`;
  }

  private told(view: PlanView): TemplateResult {
    const say = words().plan.whole;
    const { sums, singly, bound, proof } = view;
    if (!sums) return html`<p><b>${proof === 'nothing-fits' ? say.nothingFits : say.noneYet}</b></p>${view.collide.length ? html`<ul class="plan-collide">${view.collide.map((one) => html`<li>${this.collides(one)}</li>`)}</ul>` : nothing}`;
    const saved = singly ? singly.cost.minor - sums.cost.minor : 0;
    const gap = bound && sums.cost.minor > 0 ? ((sums.cost.minor - bound.minor) / sums.cost.minor) * 100 : 0;
    return html`<asf-leader big .label=${say.worth} .value=${money(sums.cost)}></asf-leader>
      <asf-leader .label=${say.cash} .value=${money(sums.cash)}></asf-leader>
      ${sums.carriage.minor ? html`<asf-leader .label=${say.carriage} .value=${money(sums.carriage)}></asf-leader>` : nothing}
      <asf-leader .label=${say.ownTime} .value=${hours(sums.own_time)}></asf-leader>
      ${sums.wait ? html`<asf-leader .label=${say.wait} .value=${count(sums.wait, 'day')}></asf-leader>` : nothing}
      <p class="reckoned">${singly ? (!singly.fits ? say.singlyNot : saved > 0 ? say.saves(money({ ...sums.cost, minor: saved })) : say.same) : nothing}
        ${proof === 'best' ? say.best : say.within(number(Math.max(gap, 0.01), 2))}</p>
      ${view.unplanned.length ? html`<p class="second">${say.unplanned(view.unplanned.length)}</p>` : nothing}`;
  }

  /** What is open and would be chosen otherwise than each part by itself. */
  private changes(view: PlanView): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const open = view.choices.filter(({ decided }) => !decided);
    const other = open.filter(({ instead_of }) => instead_of);
    const shown = this.all ? other : other.slice(0, TOLD);
    if (open.length === 0) return nothing;
    return html`${other.length ? html`<p><b>${say.changes(other.length)}</b></p><ul class="plan-changes">${shown.map((choice) => html`<li>${this.change(choice)}</li>`)}</ul>
        ${other.length > shown.length ? html`<asf-button compact word=${say.more(other.length - shown.length)} @click=${() => { this.all = true; }}></asf-button>` : nothing}` : nothing}
      <div class="plan-take"><asf-primary small verb=${say.takeAll(open.length)} icon="check" @click=${() => { void this.take(open); }}></asf-primary></div>`;
  }

  private change(choice: PlanChoice): TemplateResult {
    const say = words().plan.whole;
    const { why, name, tag } = choice;
    const what = [routeWord(choice.route), choice.from].filter(Boolean).join(', ');
    return html`<a class="plan-change" href="#/routes/${choice.part}"><b>${tagFigures(tag)} ${name || words().parts.noName}: ${what}</b>
      ${why ? html`<span class="second">${say.because[why.because](this.amount(why.because, why.more))}</span>` : nothing}</a>
      <asf-button compact word=${say.take} label="${say.take}: ${name}, ${what}" @click=${() => { void this.take([choice]); }}></asf-button>`;
  }

  private amount(because: NonNullable<PlanChoice['why']>['because'], more: number): string {
    return because === 'hours' ? hours(more) : money({ minor: more, currency: this.currency });
  }

  private collides({ limit, more, names, stage }: Collides): string {
    const say = words().plan.whole;
    const amount = more === undefined ? '' : limit === 'hours' ? hours(more) : money({ minor: more, currency: this.currency });
    return say.collide[limit]({ amount, names: names ?? [], stage: stage ?? 1 });
  }

  private order(order: PlanOrder): TemplateResult {
    const say = words().plan.whole;
    const { name, quotes, value, carriage, short, to_free } = order;
    return html`<asf-leader .label=${html`${name} <span class="second">${[count(quotes.length, 'quote'), carriage.minor ? say.carriageOf(money(carriage)) : say.free, short.minor ? say.short(money(short)) : '', to_free ? say.toFree(money(to_free)) : ''].filter(Boolean).join(', ')}</span>`} .value=${money(value)}></asf-leader>`;
  }

  private shared({ kits, donors }: PlanView): TemplateResult {
    const say = words().plan.whole;
    return html`<asf-section .label=${say.shared}>${kits.map(({ from, copies, price, spare }) => html`<asf-leader .label=${html`${[say.kit(copies), from].filter(Boolean).join(', ')} <span class="second">${spare.length ? say.spare(spare.reduce((all, { pieces }) => all + pieces, 0)) : say.noSpare}</span>`} .value=${money({ ...price, minor: price.minor * copies })}></asf-leader>`)}
      ${donors.map(({ name, cost, parts }) => html`<asf-leader .label=${html`${name} <span class="second">${say.gives(parts.length)}</span>`} .value=${cost.minor === 0 ? say.here : money(cost)}></asf-leader>`)}</asf-section>`;
  }

  /** Other limits, tried out without being kept. */
  private whatIf(view: PlanView | undefined): TemplateResult {
    const say = words().plan.whole;
    return html`<details class="quote-fold"><summary>${say.whatIf}</summary><form class="quote-form" novalidate @submit=${this.tryOut}>
      <p class="second">${say.whatIfLead}</p>
      <div class="pair"><asf-field kind="money" .label=${say.budget} .currency=${this.currency} .hint=${view?.sums ? say.now(money(view.sums.cash)) : ''} .value=${this.typed.budget} .error=${this.errors.budget ?? ''} max="40" @input=${this.follow('budget')}></asf-field>
        <asf-field kind="hours" .label=${say.hours} .hint=${view?.sums ? say.now(hours(view.sums.own_time)) : ''} .value=${this.typed.hours} .error=${this.errors.hours ?? ''} max="40" @input=${this.follow('hours')}></asf-field></div>
      <button type="submit" class="second-button">${say.go}</button></form></details>`;
  }

  private follow(member: 'budget' | 'hours'): (event: Event) => void {
    return (event) => {
      if (!(event.target instanceof HTMLInputElement)) return;
      this.errors = {};
      this.typed = { ...this.typed, [member]: event.target.value };
    };
  }

  private readonly tryOut = (event: Event): void => {
    event.preventDefault();
    const { wrong } = words().costing.form;
    const budget = this.typed.budget.trim() ? readMoney(this.typed.budget, this.currency)?.minor : null;
    const minutes = this.typed.hours.trim() ? readHours(this.typed.hours) : undefined;
    this.errors = { ...(budget === undefined && { budget: wrong.money }), ...(minutes === null && { hours: wrong.hours }) };
    if (budget === undefined || minutes === null) return;
    this.turn = { without_limits: false, ...(budget !== null && { budget }), ...(minutes !== undefined && { minutes }) };
    this.whole.soon();
  };

  private async take(choices: readonly PlanChoice[]): Promise<void> {
    const commands: Command[] = choices.map(({ quote, part }) => ({ do: 'choose', id: newId(), quote, part }));
    const [first] = commands;
    if (!first) return;
    await carryOut(commands.length === 1 ? first : { do: 'all', commands }, words().plan.whole.taken(commands.length));
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-whole-job': WholeJob } }
