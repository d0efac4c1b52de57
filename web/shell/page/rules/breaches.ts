import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../styles/terms.css';
import { today } from '../today';
import { words } from '../words';
import { brokenRule } from './breach';

/** Fit rules that the decisions break, each with its cheapest mend: of one part, else of the whole job. Nothing while all hold. */
@customElement('asf-breaches')
export class Breaches extends LightElement {
  @property({ attribute: false }) partId = '';
  private readonly live = new Live(this, 'rules', () => ({ ask: 'rules', today: today(), ...(this.partId && { part: this.partId }) }));

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('partId') && this.hasUpdated) this.live.anew();
  }

  override render(): TemplateResult {
    const broken = (this.live.view?.rules ?? []).filter(({ breach }) => breach);
    // The list is heard when it changes: a choice made here may be what breaks a rule.
    return html`<div role="status">${broken.length ? html`<asf-section .label=${words().rules.breaches.title} .count=${String(broken.length)}><ul class="broken-rules">${broken.map(brokenRule)}</ul></asf-section>` : nothing}</div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-breaches': Breaches } }
