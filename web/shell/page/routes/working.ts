import { html, nothing, type TemplateResult } from 'lit';
import type { CostView, LineKind, Money, QuoteCost } from '../../bridge/protocol';
import '../kit/leader';
import '../kit/working';
import { words } from '../words';
import { count, hours, money, number } from '../words/format';
import { amountIn } from './amount-in';
import { lineOf, said, sum } from './figure-words';
import { routeWord } from './route-word';

/** How what a quote costs came about: each number, where it is from, and the sums. */
export function working(view: CostView, quote: QuoteCost): TemplateResult {
  const say = words().costing.lines;
  const { values } = quote.record;
  const value = money(view.hour_value);
  const own = lineOf(quote, 'own-time');
  const years = count(view.years_kept, 'year');
  // To the penny here, so that the lines add up; rounded only in the bars.
  const amount = (minor: number): string => money({ minor, currency: view.currency });
  const line = (label: string | TemplateResult, kind: LineKind): TemplateResult | typeof nothing =>
    lineOf(quote, kind) === 0 ? nothing : html`<asf-leader .label=${label} .value=${amount(lineOf(quote, kind))}></asf-leader>`;
  const rate = values.exchange_rate === undefined || quote.cash?.currency === view.currency ? '' : ` ${say.atRate(number(values.exchange_rate / 1_000_000, 6))}`;
  return html`<asf-working .label=${say.heading(routeWord(quote.route), quote.renewals > 0 ? say.present(years) : say.expected, sum(quote.present, quote.guess))}>
    ${quote.cash ? line(html`${say.cash}, ${said(priceSaid(quote, quote.cash), quote.cash_certainty)}${rate}`, 'cash') : nothing}
    ${line(say.freight, 'freight')}${line(byTerms(say.tax, quote.tax_rate), 'tax')}${line(byTerms(say.duty, quote.duty_rate), 'duty')}${line(say.consumables, 'consumables')}
    ${line(say.surcharge(number((values.withheld ?? 0) / 100, 1)), 'surcharge')}${line(say.shared, 'shared')}
    ${quote.own_time > 0 ? html`<asf-leader .label=${html`${say['own-time']}, ${said(hours(quote.own_time), quote.own_time_certainty)} ${say.at(value)}`} .value=${amount(own)}></asf-leader>` : nothing}
    ${quote.chance > 0 ? risk(view, quote, amount) : nothing}
    <asf-leader result .label=${say.expected} .value=${amount(quote.expected.minor)}></asf-leader>
    ${quote.renewals > 0 ? html`
      ${line(say.renewals(count(quote.renewals, 'time'), yearsOf(values.life)), 'renewals')}
      <asf-leader result .label=${say.present(years)} .value=${amount(quote.present.minor)}></asf-leader>` : nothing}
    <asf-leader .label=${say.yearly} .value=${amount(quote.yearly.minor)}></asf-leader></asf-working>`;
}

/** "12 pieces at £4.50" where the price is for one; else the price. */
function priceSaid({ rated }: QuoteCost, cash: Money): string {
  const say = words().costing.lines;
  return rated ? `${say.amount[rated.basis](number(amountIn(rated), 3))} ${say.at(money(rated.rate))}` : money(cash);
}

function byTerms(what: string, rate: number | undefined): string {
  return rate === undefined ? what : words().costing.lines.byTerms(what, number(rate / 100, 2));
}

function yearsOf(months: number | undefined): string {
  if (months === undefined) return '';
  return months % 12 === 0 ? count(months / 12, 'year') : count(months, 'month');
}

/** Chance × (the other route + stripping again). */
function risk(view: CostView, quote: QuoteCost, amount: (minor: number) => string): TemplateResult {
  const say = words().costing.lines;
  const fallback = view.quotes.find(({ id }) => id === quote.fallback);
  const strip = quote.record.values.fails_at_bench ? 0 : (quote.strip_again / 60) * view.hour_value.minor;
  // What follows is what the risk is a share of; the fallback may fail, too, and what then follows is in it.
  const instead = quote.chance > 0 ? lineOf(quote, 'risk') / (quote.chance / 10_000) - strip : 0;
  return html`
    ${fallback ? html`<asf-leader .label=${say.instead(routeWord(fallback.route))} .value=${say.inCase(amount(instead))}></asf-leader>` : nothing}
    ${strip > 0 ? html`<asf-leader .label=${say.stripAgain(hours(quote.strip_again), money(view.hour_value))} .value=${say.inCase(amount(strip))}></asf-leader>` : nothing}
    <asf-leader .label=${html`${say.risk}, ${said(number(quote.chance / 100, 1), quote.chance_certainty)} ${say.of(amount(instead + strip))}`} .value=${amount(lineOf(quote, 'risk'))}></asf-leader>
    ${quote.fails_into_nothing ? html`<p class="reckoned">${say.noOther}</p>` : nothing}`;
}
