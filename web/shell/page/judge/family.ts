import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FamilyCode, InspectView, ProposedView } from '../../bridge/protocol';
import * as journal from '../journal';
import '../kit/button';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../styles/judge.css';
import { words } from '../words';
import './own-family';
import { OWN_FAMILY } from './own-family';
import { familyName } from './said';

/** Which family a part is of: likely ones first, then one's own, then all. Tells `asf-family` with its code or id. */
@customElement('asf-judge-family')
export class JudgeFamily extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  /** The form for a family of one's own is open; what was typed there opens it again. */
  @state() private making = journal.typedBefore(OWN_FAMILY) !== null;

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const say = words().judge.family;
    if (this.making) return html`<asf-own-family @asf-back=${() => { this.making = false; }}></asf-own-family>`;
    const rest = (Object.keys(words().families) as FamilyCode[]).filter((code) => view.proposed.every(({ family }) => family !== code));
    return html`<h2 class="judge-ask" tabindex="-1">${say.title}</h2><p class="reckoned">${say.lead}</p>
      ${view.proposed.length ? html`<asf-section .label=${say.proposed}><ul class="judge-list">${view.proposed.map((one) => html`<li>${this.likely(one)}</li>`)}</ul></asf-section>` : nothing}
      ${view.own_families.length ? html`<asf-section .label=${say.own}><ul class="judge-list">${view.own_families.map(({ id }) => html`<li>${this.tile(id, '')}</li>`)}</ul></asf-section>` : nothing}
      <asf-section .label=${say.all}><ul class="judge-list judge-all">${rest.map((code) => html`<li>${this.tile(code, '')}</li>`)}</ul></asf-section>
      <asf-button icon="add" word=${say.make} @click=${() => { this.making = true; }}></asf-button>`;
  }

  private likely({ family, learnt }: ProposedView): TemplateResult {
    const say = words().judge.family;
    return this.tile(family, learnt ? say.learnt : say.byName);
  }

  private tile(family: string, second: string): TemplateResult {
    const now = this.view?.family === family;
    const beside = now ? words().judge.family.now : second;
    return html`<button type="button" class="judge-tile ${now ? 'cut judge-chosen' : ''}" aria-pressed=${now ? 'true' : 'false'} @click=${() => { this.tell('asf-family', { family }); }}>
      <span class="judge-tile-word">${familyName(family, this.view?.own_families ?? [])}</span>${beside ? html`<small>${beside}</small>` : nothing}</button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-judge-family': JudgeFamily } }
