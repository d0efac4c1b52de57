import { html, nothing, type TemplateResult } from 'lit';
import type { CostView, QuoteCost } from '../../bridge/protocol';
import '../kit/leader';
import '../kit/working';
import { words } from '../words';
import { hours, money, number } from '../words/format';
import { lineOf, said, sum } from './figure-words';
import { routeWord } from './route-word';

/** How what a quote costs came about: each number, where it is from, and the sums. */
export function working(view: CostView, quote: QuoteCost): TemplateResult {
  const say = words().costing.lines;
  const value = money(view.hour_value);
  const own = lineOf(quote, 'own-time');
  // To the penny here, so that the lines add up; rounded only in the bars.
  const amount = (minor: number): string => money({ minor, currency: view.currency });
  return html`<asf-working .label=${say.heading(routeWord(quote.route), say.expected, sum(quote.expected, quote.guess))}>
    ${quote.cash ? html`<asf-leader .label=${html`${say.cash}, ${said(money(quote.cash), quote.cash_certainty)}`} .value=${amount(lineOf(quote, 'cash'))}></asf-leader>` : nothing}
    ${quote.own_time > 0 ? html`<asf-leader .label=${html`${say['own-time']}, ${said(hours(quote.own_time), quote.own_time_certainty)} ${say.at(value)}`} .value=${amount(own)}></asf-leader>` : nothing}
    ${quote.chance > 0 ? risk(view, quote, amount) : nothing}
    <asf-leader result .label=${say.expected} .value=${amount(quote.expected.minor)}></asf-leader></asf-working>`;
}

/** Chance × (the other route + stripping again). */
function risk(view: CostView, quote: QuoteCost, amount: (minor: number) => string): TemplateResult {
  const say = words().costing.lines;
  const fallback = view.quotes.find(({ id }) => id === quote.fallback);
  const instead = fallback ? lineOf(fallback, 'cash') + lineOf(fallback, 'own-time') : 0;
  const strip = (quote.strip_again / 60) * view.hour_value.minor;
  return html`
    ${fallback ? html`<asf-leader .label=${say.instead(routeWord(fallback.route))} .value=${say.inCase(amount(instead))}></asf-leader>` : nothing}
    ${quote.strip_again > 0 ? html`<asf-leader .label=${say.stripAgain(hours(quote.strip_again), money(view.hour_value))} .value=${say.inCase(amount(strip))}></asf-leader>` : nothing}
    <asf-leader .label=${html`${say.risk}, ${said(number(quote.chance / 100, 1), quote.chance_certainty)} ${say.of(amount(instead + strip))}`} .value=${amount(lineOf(quote, 'risk'))}></asf-leader>
    ${quote.fails_into_nothing ? html`<p class="reckoned">${say.noOther}</p>` : nothing}`;
}
