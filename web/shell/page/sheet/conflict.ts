import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { ConflictView, Seen, WrittenView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { changeSaid } from '../history/change-said';
import '../kit/button';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { moment } from '../words/format';

/** A field with more than one value: all of them, and a button on each that settles it. */
@customElement('asf-conflict')
export class Conflict extends LightElement {
  @property({ attribute: false }) conflict?: ConflictView;
  @property({ attribute: false }) seen?: Seen;
  /** Whose field it is, where that is not plain from the surroundings. */
  @property({ attribute: false }) whose: unknown = '';

  override render(): TemplateResult | typeof nothing {
    if (!this.conflict) return nothing;
    const say = words().sheet.conflict;
    const { field, values } = this.conflict;
    return html`<section class="conflict" aria-label="${words().history.field[field]}: ${say.title}">
      <div class="conflict-head"><asf-icon name="not-proved"></asf-icon><div><h2 class="section-label">${words().history.field[field]}: ${say.title}</h2>${this.whose ? html`<p class="second">${this.whose}</p>` : nothing}<p class="reckoned">${say.lead}</p></div></div>
      <ul class="conflict-values">${values.map((value) => html`<li class="conflict-value">${this.value(value)}</li>`)}</ul></section>`;
  }

  private value(value: WrittenView): TemplateResult {
    const say = words().sheet.conflict;
    const { change, named, at } = value;
    const said = named || (change ? ('clear' in change ? say.emptied : changeSaid(change).value) : words().history.other);
    return html`<div><b>${said}</b> <span class="second">${say.at(moment(new Date(at)))}</span></div>
      <asf-button compact word=${say.take} label="${say.take}: ${said}" ?disabled=${!change} @click=${() => { void this.settle(value); }}></asf-button>`;
  }

  private async settle({ change }: WrittenView): Promise<void> {
    if (!this.conflict || !change) return;
    const { id, field, values } = this.conflict;
    // Only what is on the screen was weighed: a third value that comes in meanwhile stays open.
    const seen: Seen = { [field]: values.map(({ entry }) => entry) };
    await carryOut({ do: 'change', ids: [id], changes: [change], seen }, words().sheet.conflict.settled(words().history.field[field]));
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-conflict': Conflict } }
