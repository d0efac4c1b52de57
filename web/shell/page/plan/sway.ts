import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanQuery, SwayPart, SwayQuote, SwayView } from '../../bridge/protocol';
import '../kit/button';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { tagFigures } from '../parts/tag-figures';
import { routeWord } from '../routes/route-word';
import { today } from '../today';
import { words } from '../words';
import { Asked } from './asked';

/** Which parts go another way when prices and hours move within their guesses. */
@customElement('asf-sway')
export class Sway extends LightElement {
  @property({ attribute: false }) query: PlanQuery = {};
  private readonly asked = new Asked(this, 'sway');

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('query') && this.asked.state !== 'closed') void this.ask();
  }

  override render(): TemplateResult {
    const say = words().plan.sway;
    const { view, state } = this.asked;
    return html`<asf-section .label=${say.title} .count=${view && state === 'done' ? say.drawn(view.draws) : ''}></asf-section>
      ${state === 'closed' ? html`<p class="second">${say.lead}</p><asf-button icon="chart" word=${say.open} @click=${() => { void this.ask(); }}></asf-button>` : nothing}
      <div role="status">${state === 'working' ? html`<p class="reckoned">${say.working}</p>` : state === 'failed' ? html`<p class="reckoned">${say.failed}</p>` : nothing}
      ${view && state === 'done' ? this.told(view) : nothing}</div>`;
  }

  private told({ parts, steady, fitted, draws }: SwayView): TemplateResult {
    const say = words().plan.sway;
    return html`<p class="reckoned">${parts.length ? say.steady(steady, steady + parts.length) : say.allSteady(steady)}${fitted < draws ? html` ${say.unfit(draws - fitted, draws)}` : nothing}</p>
      ${parts.length ? html`<ul class="plan-changes">${parts.map((part) => html`<li>${this.swaying(part, fitted)}</li>`)}</ul>` : nothing}`;
  }

  private swaying({ part, tag, name, quotes }: SwayPart, fitted: number): TemplateResult {
    const say = words().plan.sway;
    const told = ({ route, from, times }: SwayQuote): string => say.times([routeWord(route), from].filter(Boolean).join(', '), times, fitted);
    const first = quotes.filter(({ planned }) => planned);
    const others = quotes.filter(({ planned, times }) => !planned && times > 0);
    return html`<a class="plan-change" href="#/routes/${part}"><b>${tagFigures(tag)} ${name || words().parts.noName}</b>
      <span class="second">${first.map(told).join('; ')}<br>${say.else(others.map(told))}</span></a>`;
  }

  private async ask(): Promise<void> {
    await this.asked.ask({ ask: 'sway', plan: { ...this.query, today: today() } });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-sway': Sway } }
