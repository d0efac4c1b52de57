import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Correctness, CostView, QuoteCost, RecordView } from '../../bridge/protocol';
import '../kit/choice';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import { words } from '../words';
import { currencySign, money, number } from '../words/format';
import { readMoney } from '../words/read';
import type { Figure } from './figure-kinds';
import type { DraftErrors, Judged, QuoteDraft } from './quote-draft';
import { routeWord } from './route-word';

const ABROAD = ['EUR', 'USD', 'GBP', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'CAD', 'AUD', 'JPY'];
const ORIGINAL: readonly Correctness[] = ['original', 'new-old-stock', 'faithful-reproduction', 'pattern', 'uprated', 'home-made'];

/** The figures of a quote that most are entered without, folded away. Tells `asf-change` with what changed of the draft. */
@customElement('asf-quote-more')
export class QuoteMore extends LightElement {
  @property({ attribute: false }) view!: CostView;
  @property({ attribute: false }) quote?: QuoteCost | undefined;
  @property({ attribute: false }) draft!: QuoteDraft;
  @property({ attribute: false }) errors: DraftErrors = {};
  @property({ attribute: false }) figure!: (figure: Figure, hint?: string) => TemplateResult;
  @property({ attribute: false }) judged!: (figure: Judged, sure: string) => TemplateResult;

  /** What the price is for, where it is not asked for above. */
  @property({ attribute: false }) per: TemplateResult | typeof nothing = nothing;

  /** The supplier that the quote names, with its terms. */
  @property({ attribute: false }) terms?: RecordView | undefined;

  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override render(): TemplateResult {
    const say = words().costing.form;
    const { draft, view } = this;
    const abroad = draft.currency !== view.currency;
    return html`
      <details class="quote-fold"><summary>${say.folds.money}</summary><div class="quote-form">
        ${this.per}
        ${this.pick(say.currency, draft.currency, [view.currency, ...ABROAD.filter((code) => code !== view.currency)].map((code) => [code, currencySign(code) === code ? code : `${code} (${currencySign(code)})`]), (currency) => ({ currency }))}
        ${abroad ? this.figure('exchange_rate', say.rateHint(draft.currency, view.currency)) : nothing}
        ${this.figure('freight')}${this.figure('tax', this.byTerms('tax_rate') || this.usualTax())}${this.figure('duty', this.byTerms('duty_rate'))}${this.figure('consumables')}
        ${this.figure('surcharge', say.surchargeHint)}${draft.text.surcharge.trim() ? this.figure('withheld') : nothing}</div></details>
      <details class="quote-fold"><summary>${say.folds.lasts}</summary><div class="quote-form">
        ${this.judged('life', say.sure.life)}
        ${draft.text.chance.trim() ? nothing : this.figure('strip_again')}
        ${this.yesNo(say.atBench, draft.fails_at_bench, (fails_at_bench) => ({ fails_at_bench }))}
        ${this.pick(say.fallback, draft.fallback, [['', say.cheapestLeft], ...this.others()], (fallback) => ({ fallback }))}</div></details>
      <details class="quote-fold"><summary>${say.folds.offer}</summary><div class="quote-form">
        ${this.pick(say.correctness, draft.correctness, [['', say.notSaid], ...ORIGINAL.map((value) => [value, words().costing.correctness[value]] as const)], (correctness) => ({ correctness: correctness as QuoteDraft['correctness'] }))}
        ${this.day()}${this.judged('wait', say.sure.wait)}</div></details>
      <details class="quote-fold"><summary>${say.folds.range}</summary><p class="second">${say.rangeHint}</p><div class="quote-form quote-pairs">
        ${this.figure('cash_least')}${this.figure('cash_most')}${this.figure('own_time_least')}${this.figure('own_time_most')}
        ${this.figure('chance_least')}${this.figure('chance_most')}${this.figure('life_least')}${this.figure('life_most')}
        ${this.figure('wait_least')}${this.figure('wait_most')}</div></details>`;
  }

  /** What comes on top by the terms of the supplier where nothing is said. */
  private byTerms(rate: 'tax_rate' | 'duty_rate'): string {
    const on = this.terms?.values[rate];
    return on ? words().costing.form.byTerms(number(on / 100, 2)) : '';
  }

  /** What the usual tax on what was typed would be. */
  private usualTax(): string {
    const rate = this.head.view?.settings.tax_rate ?? 0;
    const { text, currency } = this.draft;
    const prices = [text.cash, text.freight, text.duty].map((typed) => readMoney(typed, currency)?.minor ?? 0);
    const sum = prices.reduce((all, one) => all + one, 0);
    return rate > 0 && sum > 0 ? words().costing.form.usualTax(number(rate / 100, 2), money({ minor: Math.round((sum * rate) / 10_000), currency })) : '';
  }

  private others(): (readonly [string, string])[] {
    return this.view.quotes.filter(({ id }) => id !== this.quote?.id).map(({ id, route, from }) => [id, [routeWord(route), from ?? ''].filter(Boolean).join(', ')] as const);
  }

  private pick(label: string, value: string, options: readonly (readonly [string, string])[], change: (value: string) => Partial<QuoteDraft>): TemplateResult {
    return html`<asf-pick .label=${label} .options=${options} .value=${value} @asf-change=${(event: CustomEvent<{ value: string }>) => { event.stopPropagation(); this.tell('asf-change', change(event.detail.value)); }}></asf-pick>`;
  }

  private yesNo(label: string, value: boolean, change: (value: boolean) => Partial<QuoteDraft>): TemplateResult {
    const say = words().costing.form;
    return html`<asf-choice columns="1" .label=${label} .options=${[{ value: 'no', word: say.afterRefit }, { value: 'yes', word: say.yesAtBench }]} .value=${value ? 'yes' : 'no'} @asf-change=${(event: CustomEvent<{ value: string }>) => { event.stopPropagation(); this.tell('asf-change', change(event.detail.value === 'yes')); }}></asf-choice>`;
  }

  private day(): TemplateResult {
    const say = words().costing.form;
    const error = this.errors.valid_until ?? '';
    return html`<div class="field"><label class="field-label" for="quote-valid">${say.validUntil}</label><div class="field-box"><input id="quote-valid" class="field-input" type="date" .value=${this.draft.valid_until} aria-invalid=${error ? 'true' : nothing} @input=${(event: Event) => {
      event.stopPropagation();
      if (event.target instanceof HTMLInputElement) this.tell('asf-change', { valid_until: event.target.value });
    }}></div>${error ? html`<p class="field-error" role="alert">${error}</p>` : nothing}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-quote-more': QuoteMore } }
