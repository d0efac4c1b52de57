import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { CertaintyView, CostView, HeavyQuery, KnowingView, PricedTest, TestView, WaitView } from '../../bridge/protocol';
import '../kit/button';
import '../kit/field';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../parts/pick';
import { routeWord } from '../routes/route-word';
import { today } from '../today';
import { words } from '../words';
import { count, minorDigits, moneyRound, ofHundred } from '../words/format';
import { readHours, readMoney, readNumber } from '../words/read';

/** As many figures as are told to be worth finding out. */
const TOLD = 3;
type Typed = Record<'quote' | 'price' | 'time' | 'finds' | 'spares', string>;

/** How sure one may be of the routes of a part; worked out when it is asked for, beside the screen. */
@customElement('asf-certainty')
export class Certainty extends LightElement {
  @property({ attribute: false }) view?: CostView;
  @state() private found: CertaintyView | undefined;
  @state() private stage: 'closed' | 'working' | 'done' | 'failed' = 'closed';
  @state() private typed: Typed = { quote: '', price: '', time: '', finds: '90', spares: '90' };
  @state() private errors: Partial<Typed> = {};
  private asking: AbortController | undefined;

  override disconnectedCallback(): void {
    this.asking?.abort();
    super.disconnectedCallback();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (!changed.has('view') || !before || before === this.view) return;
    // Other figures, another answer.
    if (before.part !== this.view?.part) [this.found, this.stage] = [undefined, 'closed'];
    else if (this.stage === 'done') void this.weigh();
  }

  override render(): TemplateResult | typeof nothing {
    const say = words().certainty;
    const { view, found } = this;
    if (!view || view.quotes.filter(({ allowed }) => allowed).length < 2) return nothing;
    return html`<asf-section .label=${say.title}><p class="second">${say.lead}</p>
      <div role="status">${this.stage === 'working' ? html`<p class="reckoned">${say.working}</p>` : this.stage === 'failed' ? html`<p class="reckoned">${say.failed}</p>` : nothing}${found ? this.told(found) : nothing}</div>
      ${this.stage === 'closed' || this.stage === 'failed' ? html`<asf-button icon="chart" word=${this.stage === 'failed' ? say.again : say.open} @click=${() => { void this.weigh(); }}></asf-button>` : nothing}
      ${found ? this.test(view, found) : nothing}</asf-section>`;
  }

  private told(found: CertaintyView): TemplateResult {
    const say = words().certainty;
    const best = found.quotes.find(({ id }) => id === found.cheapest);
    const knowing = found.knowing.filter(({ worth }) => worth.minor >= 10 ** minorDigits(worth.currency)).slice(0, TOLD);
    return html`<p><b>${say.often}</b></p>${found.quotes.map((quote) => html`<asf-leader .label=${html`${routeWord(quote.route)} <span class="second">${say.range(moneyRound(quote.p10), moneyRound(quote.p90))}${quote.wait ? html`<br>${waited(quote.wait)}` : nothing}</span>`} .value=${ofHundred(quote.cheapest)}></asf-leader>`)}
      ${best ? html`<p class="reckoned">${found.regret.minor >= 10 ** minorDigits(found.currency) ? say.wrong(routeWord(best.route), moneyRound(found.regret)) : say.right(routeWord(best.route))}</p>` : nothing}
      <p><b>${say.knowing}</b></p>${knowing.length ? knowing.map((one) => html`<asf-leader .label=${this.named(one)} .value=${say.upTo(moneyRound(one.worth))}></asf-leader>`) : html`<p class="second">${found.knowing.length ? say.nothing : say.sure}</p>`}`;
  }

  private named({ input, quote }: KnowingView): string {
    const route = this.view?.quotes.find(({ id }) => id === quote)?.route;
    return words().certainty.knowingOne(words().certainty.inputs[input], route ? routeWord(route) : '');
  }

  private test(view: CostView, found: CertaintyView): TemplateResult {
    const say = words().certainty.test;
    const risky = view.quotes.filter(({ allowed }) => allowed);
    return html`<details class="quote-fold"><summary>${say.title}</summary><form class="quote-form" novalidate @submit=${this.ask}>
      <p class="second">${say.lead}</p>
      <asf-pick .label=${say.quote} .value=${this.typed.quote || risky[0]?.id || ''} .options=${risky.map(({ id, route, from }) => [id, [routeWord(route), from].filter(Boolean).join(' · ')] as const)} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.typed = { ...this.typed, quote: event.detail.value }; }}></asf-pick>
      <div class="pair"><asf-field kind="money" .label=${say.price} .currency=${view.currency} .value=${this.typed.price} .error=${this.errors.price ?? ''} max="40" @input=${this.follow('price')}></asf-field>
        <asf-field kind="hours" .label=${say.time} .value=${this.typed.time} .error=${this.errors.time ?? ''} max="40" @input=${this.follow('time')}></asf-field></div>
      <div class="pair"><asf-field kind="number" .label=${say.finds} .value=${this.typed.finds} .error=${this.errors.finds ?? ''} max="6" @input=${this.follow('finds')}></asf-field>
        <asf-field kind="number" .label=${say.spares} .value=${this.typed.spares} .error=${this.errors.spares ?? ''} max="6" @input=${this.follow('spares')}></asf-field></div>
      <button type="submit" class="second-button">${say.go}</button>
      <div role="status">${found.test ? this.verdict(view, found.test) : nothing}</div></form></details>`;
  }

  private verdict(view: CostView, test: TestView): TemplateResult {
    const say = words().certainty.test;
    const route = (id: string): string => { const quote = view.quotes.find((one) => one.id === id); return quote ? routeWord(quote.route) : ''; };
    return html`<p class="reckoned"><b>${say.said(moneyRound(test.worth), moneyRound(test.costs), test.gain.minor > 0)}</b> ${say.then(route(test.best_if_fails), route(test.best_if_not), ofHundred(test.says_fails))}</p>`;
  }

  private follow(member: keyof Typed): (event: Event) => void {
    return (event) => {
      if (!(event.target instanceof HTMLInputElement)) return;
      this.errors = {};
      this.typed = { ...this.typed, [member]: event.target.value };
    };
  }

  private readonly ask = (event: Event): void => {
    event.preventDefault();
    const { view } = this;
    if (!view) return;
    const { typed: t } = this;
    const share = (text: string): number => (readNumber(text) ?? -1) / 100;
    const [sensitivity, specificity] = [share(t.finds), share(t.spares)];
    // What was left out costs nothing; what cannot be read is not left out.
    const price = t.price.trim() ? readMoney(t.price, view.currency)?.minor : 0;
    const time = t.time.trim() ? readHours(t.time) : 0;
    const { wrong } = words().costing.form;
    const beyond = (one: number): boolean => one < 0 || one > 1;
    this.errors = {
      ...(price === undefined && { price: wrong.money }), ...(time === null && { time: wrong.hours }),
      ...(beyond(sensitivity) && { finds: words().certainty.test.wrong }), ...(beyond(specificity) && { spares: words().certainty.test.wrong }),
    };
    if (price === undefined || time === null || beyond(sensitivity) || beyond(specificity)) return;
    const quote = t.quote || view.quotes.find(({ allowed }) => allowed)?.id || '';
    void this.weigh({ quote, sensitivity, specificity, price, own_time: time });
  };

  private async weigh(test?: PricedTest): Promise<void> {
    const { view } = this;
    if (!view) return;
    this.asking?.abort();
    const asking = new AbortController();
    this.asking = asking;
    this.stage = 'working';
    const query: HeavyQuery = { ask: 'certainty', part: view.part, today: today(), ...(test && { test }) };
    try {
      const answer = await desk.weigh(query, asking.signal);
      if (asking.signal.aborted) return;
      [this.found, this.stage] = answer.view === 'certainty' ? [answer, 'done'] : [undefined, 'failed'];
    } catch {
      if (!asking.signal.aborted) this.stage = 'failed';
    }
  }
}

/** How long one waits 8 times in 10, in whole days. */
function waited({ p10, p90, likely }: WaitView): string {
  const days = (value: number): number => Math.round(value);
  return days(p10) === days(p90) ? words().certainty.waitOf(count(days(likely), 'day')) : words().certainty.waits(String(days(p10)), count(days(p90), 'day'));
}

declare global { interface HTMLElementTagNameMap { 'asf-certainty': Certainty } }
