import { html, nothing, type TemplateResult } from 'lit';
import type { CostView } from '../../bridge/protocol';
import { words } from '../words';
import { hours, hoursDecimal } from '../words/format';
import { said } from './figure-words';
import { flipPoint } from './flip-point';
import { routeWord } from './route-word';

/** What would change the answer, in one sentence. */
export function flipSentence(view: CostView): TemplateResult | typeof nothing {
  const say = words().costing.sentence;
  const allowed = view.quotes.filter((quote) => quote.allowed);
  const [only] = allowed;
  if (only && allowed.length === 1) return html`<p class="reckoned">${say.alone(routeWord(only.route))}</p>`;
  if (view.hour_value.minor === 0) return html`<p class="reckoned">${say.noHour}</p>`;
  const flip = flipPoint(view);
  if (!flip) return nothing;
  const { bench, against, says } = flip;
  const told = said(bench.own_time % 60 === 0 || bench.own_time < 60 ? hours(bench.own_time) : hoursDecimal(bench.own_time), bench.own_time_certainty);
  const doing = bench.route === 'repair-here' ? say.repairing : routeWord(bench.route);
  const lead = { cheapest: say.cheapest(doing), cheaper: say.cheaper(routeWord(against.route), doing), 'would-be': say.wouldBe(routeWord(bench.route)) }[says];
  return html`<p class="reckoned">${lead}<b>${say.under(hoursDecimal(flip.hours * 60))}</b>${bench.own_time > 0 ? html`${say.said}${told}.` : '.'}</p>`;
}
