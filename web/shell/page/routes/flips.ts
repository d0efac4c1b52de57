import { html, nothing, type TemplateResult } from 'lit';
import type { CostView } from '../../bridge/protocol';
import '../kit/section';
import { words } from '../words';
import { number } from '../words/format';
import { said } from './figure-words';
import { flipSaid, flipsInOrder } from './flip-said';
import { routeWord } from './route-word';

/** As many as are told without being asked. */
const TOLD = 2;

/** What would change the answer: the two figures likeliest to be wrong at once, all others behind a tap. */
export function flips(view: CostView): TemplateResult | typeof nothing {
  const say = words().costing;
  const allowed = view.quotes.filter((quote) => quote.allowed);
  const [only] = allowed;
  if (only && allowed.length === 1) return html`<p class="reckoned">${say.sentence.alone(routeWord(only.route))}</p>${noHour(view)}`;
  const all = flipsInOrder(view).map((flip) => flipSaid(view, flip));
  const sentence = ({ lead, bold, now, certainty }: (typeof all)[number]): TemplateResult =>
    html`${lead} <b>${bold}</b>${certainty === 'starting' ? say.flips.unsaid : say.flips.said}${said(now, certainty)}.`;
  return html`
    ${openOrder(view)}
    ${noHour(view)}
    ${all.slice(0, TOLD).map((one) => html`<p class="reckoned">${sentence(one)}</p>`)}
    ${all.length > TOLD ? html`<details class="flips"><summary>${say.flips.more(number(all.length - TOLD))}</summary><ul>${all.slice(TOLD).map((one) => html`<li class="reckoned">${sentence(one)}</li>`)}</ul></details>` : nothing}`;
}

/** Own hours count only once somebody says what one is worth. */
function noHour(view: CostView): TemplateResult | typeof nothing {
  const say = words().costing.sentence;
  return view.hour_value.minor === 0 ? html`<p class="reckoned">${say.noHour} <a class="routes-hour" href="#/settings">${say.setHour}</a></p>` : nothing;
}

/** The figures are so unsure that another may be cheaper after all. */
function openOrder(view: CostView): TemplateResult | typeof nothing {
  const rivals = view.quotes.filter(({ id }) => view.open_with.includes(id)).map(({ route }) => routeWord(route));
  const cheapest = view.quotes.find(({ id }) => id === view.cheapest);
  return rivals.length > 0 && cheapest ? html`<p class="reckoned">${words().costing.flips.open(routeWord(cheapest.route), [...new Set(rivals)])}</p>` : nothing;
}
