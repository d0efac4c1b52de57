import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Aim, Collides, Command, Currency, PlanChoice, PlanOrder, PlanQuery, PlanStep, PlanTaken, PlanView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/choice';
import '../kit/leader';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { tagFigures } from '../parts/tag-figures';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { count, hours, money, number } from '../words/format';
import './frontier';
import './kept-plans';
import './sway';
import './two-aims';
import './what-if';
import { Whole } from './whole';

/** As many parts of a step as are named. */
const NAMED = 3;

/** The cheapest set of routes for all parts together: what it comes to, how sure that is, what it would change, and why. */
@customElement('asf-whole-job')
export class WholeJob extends LightElement {
  @property() currency: Currency = 'GBP';
  @property() aim: Aim = 'regular-road-use';
  @state() private reopen = false;
  @state() private turn: PlanQuery = {};
  private readonly whole = new Whole(this, () => this.query());
  private asked: PlanQuery = {};

  override render(): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const { view, working, failed } = this.whole;
    if (view && view.choices.length === 0 && view.collide.length === 0 && view.proof !== 'open') return nothing;
    return html`<asf-section .label=${say.title} .count=${view?.sums ? say.parts(view.choices.length) : ''}></asf-section>
      <asf-choice compact columns="2" .label=${say.decided} .options=${[{ value: 'stay', word: say.stays }, { value: 'open', word: say.mayChange }]} .value=${this.reopen ? 'open' : 'stay'}
        @asf-change=${(event: CustomEvent<{ value: string }>) => { this.reopen = event.detail.value === 'open'; this.again(); }}></asf-choice>
      <div role="status">${view ? this.told(view) : nothing}<p class="reckoned">${failed ? say.failed : working && view?.proof !== 'best' ? (view ? say.improving : say.working) : nothing}</p></div>
      ${working && view && view.proof !== 'best' ? html`<asf-button compact word=${say.stop} @click=${this.whole.stop}></asf-button>` : nothing}
      ${view ? this.steps(view) : nothing}
      <asf-what-if .view=${view} .currency=${this.currency} @asf-turn=${(event: CustomEvent<{ query: PlanQuery }>) => { this.turn = event.detail.query; this.again(); }}></asf-what-if>
      ${view ? html`<asf-kept-plans .view=${view} .query=${this.whole.answers}></asf-kept-plans>` : nothing}
      ${view?.orders.length ? html`<asf-section .label=${say.orders}></asf-section>${view.orders.map((order) => this.order(order))}` : nothing}
      ${view?.kits.length || view?.donors.length ? this.shared(view) : nothing}
      ${view?.sums ? html`<asf-frontier .query=${this.asked} .currency=${this.currency}></asf-frontier><asf-sway .query=${this.asked}></asf-sway><asf-two-aims .query=${this.asked} .view=${view} .aim=${this.turn.aim ?? this.aim}></asf-two-aims>` : nothing}`;
  }

  private query(): PlanQuery {
    return { ...this.turn, ...(this.reopen && { reopen: true }) };
  }

  /** What others are asked with changes only with what this is asked with. */
  private again(): void {
    this.asked = this.query();
    this.whole.soon();
  }

  private told(view: PlanView): TemplateResult {
    const say = words().plan.whole;
    const { sums, singly, own, bound, proof } = view;
    if (!sums) return html`<p><b>${proof === 'nothing-fits' ? say.nothingFits : say.noneYet}</b></p>${view.collide.length ? html`<ul class="plan-collide">${view.collide.map((one) => html`<li>${this.collides(one)}</li>`)}</ul>` : nothing}`;
    const than = own ?? singly;
    const saved = than ? than.cost.minor - sums.cost.minor : 0;
    const gap = bound && sums.cost.minor > 0 ? ((sums.cost.minor - bound.minor) / sums.cost.minor) * 100 : 0;
    const compared = than ? (!than.fits ? (own ? say.ownNot : say.singlyNot) : saved > 0 ? (own ? say.savesOwn : say.saves)(money({ ...sums.cost, minor: saved })) : own ? say.sameOwn : say.same) : nothing;
    return html`<asf-leader big .label=${say.worth} .value=${money(sums.cost)}></asf-leader>
      <asf-leader .label=${say.cash} .value=${money(sums.cash)}></asf-leader>
      ${sums.carriage.minor ? html`<asf-leader .label=${say.carriage} .value=${money(sums.carriage)}></asf-leader>` : nothing}
      <asf-leader .label=${say.ownTime} .value=${hours(sums.own_time)}></asf-leader>
      ${sums.wait ? html`<asf-leader .label=${say.wait} .value=${count(sums.wait, 'day')}></asf-leader>` : nothing}
      <p class="reckoned">${compared} ${than?.fits ? this.apart(than, sums) : nothing} ${proof === 'best' ? say.best : say.within(number(Math.max(gap, 0.01), 2))}</p>
      ${view.unplanned.length ? html`<p class="second">${say.unplanned(view.unplanned.length)}</p>` : nothing}`;
  }

  /** By how much cash, hours and days it differs. */
  private apart(than: NonNullable<PlanView['singly']>, sums: NonNullable<PlanView['sums']>): string {
    const say = words().plan.whole;
    const differs = [
      signed(sums.cash.minor - than.cash.minor, (minor) => money({ ...sums.cash, minor }), say.ofCash),
      signed(sums.own_time - than.own_time, hours, say.ofTime),
      signed(sums.wait - than.wait, (days) => count(days, 'day'), say.ofWait),
    ].filter(Boolean);
    return differs.length ? `${differs.join(', ')}.` : '';
  }

  /** The way from what was chosen to the plan, what brings most first. */
  private steps(view: PlanView): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const open = view.choices.filter(({ decided, chosen }) => !decided && !chosen);
    const steps = view.steps ?? [];
    if (open.length === 0) return nothing;
    const all = this.reopen ? steps.flatMap(({ parts }) => parts) : open;
    return html`${steps.length ? html`<p><b>${say.changes}</b></p><ol class="plan-changes">${steps.map((step) => html`<li>${this.step(view, step)}</li>`)}</ol>` : nothing}
      ${this.otherwise(view)}
      ${all.length ? html`<div class="plan-take"><asf-primary small verb=${this.reopen ? say.takeSteps(all.length) : say.takeAll(all.length)} icon="check" @click=${() => { void this.take(all); }}></asf-primary></div>` : nothing}`;
  }

  /** Each part that does not take its own cheapest, and what stands against that. */
  private otherwise({ choices }: PlanView): TemplateResult | typeof nothing {
    const say = words().plan.whole;
    const other = choices.filter(({ why }) => why);
    if (other.length === 0) return nothing;
    return html`<details class="quote-fold"><summary>${say.otherwise(other.length)}</summary><ul class="plan-changes">${other.map((choice) => html`<li><a class="plan-change" href="#/routes/${choice.part}"><b>${this.named(choice)}</b>
      ${choice.why ? html`<span class="second">${say.because[choice.why.because](this.amount(choice.why.because, choice.why.more))}</span>` : nothing}</a></li>`)}</ul></details>`;
  }

  private step(view: PlanView, step: PlanStep): TemplateResult {
    const say = words().plan.whole;
    const found = step.parts.map(({ part }) => view.choices.find((choice) => choice.part === part)).filter((choice) => choice !== undefined);
    const title = step.why === 'rest' ? say.rest(found.length) : found.slice(0, NAMED).map((choice) => this.named(choice)).join('; ') + (found.length > NAMED ? ` ${say.andMore(found.length - NAMED)}` : '');
    const [first] = found;
    const why = step.why === 'itself' && first?.why ? say.because[first.why.because](this.amount(first.why.because, first.why.more)) : say.step[step.why](step.name ?? '');
    return html`<a class="plan-change" href="#/routes/${first?.part ?? ''}"><b>${title}</b>${why ? html`<span class="second">${why}</span>` : nothing}
        <span><b>${signed(-step.saves.minor, (minor) => money({ ...step.saves, minor }), '')}</b>${step.own_time ? html` · ${signed(step.own_time, hours, '')}` : nothing}</span></a>
      <asf-button compact word=${say.take} label="${say.take}: ${title}" @click=${() => { void this.take(step.parts); }}></asf-button>`;
  }

  private named({ tag, name, route, from }: PlanChoice): string {
    return `${tagFigures(tag)} ${name || words().parts.noName}: ${[routeWord(route), from].filter(Boolean).join(', ')}`;
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
    return html`<asf-section .label=${say.shared}></asf-section>${kits.map(({ from, copies, price, spare }) => html`<asf-leader .label=${html`${[say.kit(copies), from].filter(Boolean).join(', ')} <span class="second">${spare.length ? say.spare(spare.reduce((all, { pieces }) => all + pieces, 0)) : say.noSpare}</span>`} .value=${money({ ...price, minor: price.minor * copies })}></asf-leader>`)}
      ${donors.map(({ name, cost, parts }) => html`<asf-leader .label=${html`${name} <span class="second">${say.gives(parts.length)}</span>`} .value=${cost.minor === 0 ? say.here : money(cost)}></asf-leader>`)}`;
  }

  private async take(choices: readonly PlanTaken[]): Promise<void> {
    const commands: Command[] = choices.map(({ quote, part }) => ({ do: 'choose', id: newId(), quote, part }));
    const [first] = commands;
    if (!first) return;
    await carryOut(commands.length === 1 ? first : { do: 'all', commands }, words().plan.whole.taken(commands.length));
  }
}

/** With its sign and what it is of; empty where it is nothing. */
function signed(amount: number, told: (amount: number) => string, of: string): string {
  // The sign stays with its figure.
  return amount === 0 ? '' : `${amount < 0 ? '−' : '+'}\u2060${told(Math.abs(amount))}${of ? ` ${of}` : ''}`;
}

declare global { interface HTMLElementTagNameMap { 'asf-whole-job': WholeJob } }
