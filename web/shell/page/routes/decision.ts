import { html, nothing, type TemplateResult } from 'lit';
import type { CostView, QuoteCost } from '../../bridge/protocol';
import '../kit/button';
import '../kit/leader';
import '../kit/message';
import '../kit/section';
import { words } from '../words';
import { dayOfYear, hours, money, moneyRound, number } from '../words/format';
import { routeWord } from './route-word';

/** The decision that holds: who, when, at which figures, and what has moved since. */
export function decision(view: CostView, takeBack: () => void): TemplateResult | typeof nothing {
  const { chosen } = view;
  if (!chosen?.values.route) return nothing;
  const say = words().costing;
  const { route, who = '', taken, from, cash, own_time, chance, strip_again, expected_then, hour_value_then } = chosen.values;
  const line = (label: string, value: string): TemplateResult => html`<asf-leader .label=${label} .value=${value}></asf-leader>`;
  return html`<asf-section .label=${say.chosenBy(routeWord(route), who, taken === undefined ? '' : dayOfYear(new Date(taken)))} .count=${say.chosenAt}>
    ${from ? line(say.form.from, from) : nothing}
    ${cash ? line(words().routes.cash, money(cash)) : nothing}
    ${own_time ? line(words().routes.ownTime, `${hours(own_time)}${hour_value_then ? ` ${say.lines.at(money(hour_value_then))}` : ''}`) : nothing}
    ${chance ? line(say.form.figure.chance, number(chance / 100, 1)) : nothing}
    ${strip_again ? line(say.form.figure.strip_again, hours(strip_again)) : nothing}
    ${expected_then === undefined ? nothing : line(say.lines.expected, moneyRound({ minor: expected_then, currency: hour_value_then?.currency ?? view.currency }))}
    ${since(view, expected_then)}
    <asf-button compact plain icon="undo" word=${say.unchoose} @click=${takeBack}></asf-button></asf-section>`;
}

/** Another route has overtaken the one that was chosen: said before anything else. */
export function overtaken(view: CostView): TemplateResult | typeof nothing {
  const by = view.quotes.find(({ id }) => id === view.overtaken?.by);
  return by && view.overtaken ? html`<asf-message .happened=${words().costing.changed(routeWord(by.route), moneyRound(view.overtaken.saves))} .todo=${words().costing.changedTodo}></asf-message>` : nothing;
}

function since(view: CostView, then: number | undefined): TemplateResult | typeof nothing {
  const now: QuoteCost | undefined = view.quotes.find(({ id }) => id === view.chosen?.values.quote);
  if (then === undefined || !now || Math.round(now.present.minor) === Math.round(then)) return nothing;
  const { currency } = view;
  return html`<p class="reckoned">${words().costing.nowAt(moneyRound({ minor: then, currency }), moneyRound(now.present))}</p>`;
}
