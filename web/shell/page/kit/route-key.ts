import { html, svg, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';

/** The one line that names what the bars are drawn in. */
@customElement('asf-route-key')
export class RouteKey extends LightElement {
  /** The bars stand without the bracket of 8 in 10 cases. */
  @property({ type: Boolean, attribute: 'no-brackets' }) noBrackets = false;
  /** Some of them hold what is done again later. */
  @property({ type: Boolean }) again = false;

  override render(): TemplateResult {
    const say = words().routes;
    const box = svg`<rect class="bar-open" x="1" y="1" width="12" height="12" />`;
    return html`<span class="route-key">
      <span><svg viewBox="0 0 14 14" aria-hidden="true">${box}<rect class="bar-cash" x="1" y="1" width="12" height="12" /></svg>${say.cash}</span>
      <span><svg viewBox="0 0 14 14" aria-hidden="true">${box}<path class="bar-hatch" d="M1 13L13 1M1 7L7 1M7 13L13 7" /></svg>${say.ownTime}</span>
      <span><svg viewBox="0 0 14 14" aria-hidden="true">${box}</svg>${say.risk}</span>
      ${this.again ? html`<span><svg viewBox="0 0 14 14" aria-hidden="true"><rect class="bar-again" x="1" y="1" width="12" height="12" /></svg>${say.again}</span>` : nothing}
      ${this.noBrackets ? nothing : html`<span><svg class="route-key-bracket" viewBox="0 0 20 14" aria-hidden="true"><path class="bar-bracket" d="M1 3V11M1 7H19M19 3V11" /></svg>${say.eightInTen}</span>`}
    </span>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-route-key': RouteKey } }
