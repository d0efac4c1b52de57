import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { InspectView, RouteLeft } from '../../bridge/protocol';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { tagFigures } from '../parts/tag-figures';
import { routeWord } from '../routes/route-word';
import '../styles/judge.css';
import { words } from '../words';
import { listed } from '../words/format';
import { otherSideWord } from './findings';

/** What the judgement leaves to do with a part, what it does not leave and why, and what is decided together with it. */
@customElement('asf-routes-left')
export class RoutesLeft extends LightElement {
  @property({ attribute: false }) view?: InspectView;

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const say = words().judge;
    const left = view.routes.filter(({ why }) => why === undefined);
    const not = view.routes.filter(({ why }) => why !== undefined);
    return html`<asf-section .label=${say.routes}>
      ${left.length ? html`<ul class="routes-left" aria-label=${say.left}>${left.map((route) => html`<li>${this.left(route)}</li>`)}</ul>` : html`<p class="reckoned">${say.noneLeft}</p>`}
      ${not.length ? html`<ul class="routes-not" aria-label=${say.notLeft}>${not.map(({ route, why }) => html`<li class="second"><s>${routeWord(route)}</s>: ${why ? words().costing.reasons[why] : ''}</li>`)}</ul>` : nothing}
      ${this.sentences(view).map((sentence) => html`<p class="reckoned">${sentence}</p>`)}</asf-section>`;
  }

  private left({ route, usual }: RouteLeft): TemplateResult {
    return html`<b>${routeWord(route)}</b>${usual ? html` <span class="second">${words().judge.usual}</span>` : nothing}`;
  }

  private sentences(view: InspectView): string[] {
    const say = words().judge;
    const other = view.other_side;
    return [
      view.keep_as_pattern ? say.pattern : '',
      view.pair ? (other ? `${say.together(tagFigures(other.tag))} ${say.otherVerdict(otherSideWord(view), tagFigures(other.tag), say.verdict[view.other_verdict ?? 'not-known'])}.` : say.pairAlone) : '',
      view.matched ? (mates(view) ? say.matchedWith(mates(view)) : say.matched) : '',
    ].filter(Boolean);
  }
}

/** The pieces of its set, by tag, but for the other side. */
function mates({ together, other_side }: InspectView): string {
  return listed(together.filter(({ id }) => id !== other_side?.id).map(({ tag }) => tagFigures(tag)));
}

declare global { interface HTMLElementTagNameMap { 'asf-routes-left': RoutesLeft } }
