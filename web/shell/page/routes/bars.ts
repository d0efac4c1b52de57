import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CostView, QuoteCost } from '../../bridge/protocol';
import '../kit/route-bar';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { count, money, moneyRound } from '../words/format';
import { lineOf, paid, sorted, sum } from './figure-words';
import { confidenceOf, routeWord } from './route-word';

/** The quotes side by side on one scale. Tells `asf-pick` with the one to be looked at. */
@customElement('asf-route-bars')
export class RouteBars extends LightElement {
  @property({ attribute: false }) view?: CostView;
  @property() picked = '';

  override render(): TemplateResult {
    const quotes = this.view ? sorted(this.view) : [];
    const scale = Math.max(1, ...quotes.filter(({ allowed }) => allowed).flatMap(({ present, high }) => [present.minor, high.minor]));
    return html`<ul class="route-bars">${quotes.map((quote, i) => html`<li><button type="button" class="route-pick" aria-pressed=${quote.id === this.picked ? 'true' : 'false'} @click=${() => { this.tell('asf-pick', { id: quote.id }); }}>
      ${this.bar(quote, scale, i)}</button></li>`)}</ul>`;
  }

  private bar(quote: QuoteCost, scale: number, index: number): TemplateResult {
    const say = words().costing;
    const [cash, ownTime, risk, again] = [paid(quote), lineOf(quote, 'own-time'), lineOf(quote, 'risk'), lineOf(quote, 'renewals')];
    const round = (minor: number): string => moneyRound({ minor, currency: quote.present.currency });
    const bracket = quote.guess ? { low: round(quote.low.minor), high: round(quote.high.minor) } : {};
    return html`<asf-route-bar .route=${routeWord(quote.route)} .cash=${cash} .ownTime=${ownTime} .risk=${risk} .again=${again} .low=${quote.guess ? quote.low.minor : undefined} .high=${quote.guess ? quote.high.minor : undefined} .scale=${scale} .total=${this.total(quote)}
      .parts=${{ cash: round(cash), ownTime: round(ownTime), risk: round(risk), ...(again > 0 && { again: round(again) }), ...bracket }} .how=${this.how(quote)} ?cheapest=${quote.id === this.view?.cheapest} ?struck=${!quote.allowed}
      .reason=${quote.why ? say.reasons[quote.why] : ''} .key=${index < 9 ? String(index + 1) : ''}>${this.below(quote)}</asf-route-bar>`;
  }

  private below(quote: QuoteCost): TemplateResult | typeof nothing {
    const chosen = this.view?.chosen?.values.quote === quote.id ? words().costing.chosen : '';
    const { wait } = quote.record.values;
    const { stance } = quote.record.values;
    const text = [stance ? words().stance.said[stance] : '', quote.from ?? '', wait === undefined ? '' : words().certainty.waitOf(count(wait, 'day')), chosen].filter(Boolean).join(' · ');
    return text ? html`<p class="second route-below">${text}</p>` : nothing;
  }

  private total(quote: QuoteCost): string {
    // A price in another currency cannot be summed: it is shown as it was entered.
    if (quote.why === 'other-currency' && quote.cash) return money(quote.cash);
    // What nobody knows the amount of is no sum yet.
    const { rate, rate_basis } = quote.record.values;
    if (quote.why === 'amount-missing' && rate) return [money(rate), rate_basis ? words().costing.form.perOne[rate_basis] : ''].filter(Boolean).join(' ');
    return sum(quote.present, quote.guess);
  }

  private how(quote: QuoteCost): ReturnType<typeof confidenceOf> {
    if (!quote.guess) return 'sure';
    const all = [quote.cash_certainty, quote.own_time_certainty, quote.chance_certainty];
    return all.includes('wild-guess') || all.includes('starting') ? 'wild' : 'about';
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-route-bars': RouteBars } }
