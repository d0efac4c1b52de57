import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { RefitStepView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { carryOut } from '../carry-out';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../sheet/spoken';
import { words } from '../words';
import { moment } from '../words/format';
import './consumables';

/** What else belongs to a step: what is loose beside it, what it uses up, where it lies, what was noted. */
@customElement('asf-step-body')
export class StepBody extends LightElement {
  @property({ attribute: false }) view!: RefitStepView;
  @state() private note = '';
  private shown = '';
  private busy = false;

  override willUpdate(): void {
    const { id } = this.view.record;
    if (id === this.shown) return;
    this.shown = id;
    this.note = journal.typedBefore(this.key) ?? '';
  }

  override render(): TemplateResult {
    const say = words().refit.onStep;
    const { consumables, record } = this.view;
    return html`<a class="rf-loose" href="#/refit/loose"><asf-icon name="loose"></asf-icon><span><b>${this.view.loose ? words().refit.loose.inAssembly(this.view.loose) : words().refit.loose.noneInAssembly}</b> ${say.looseHere}</span><asf-icon name="next" size="20"></asf-icon></a>
      ${consumables.length ? html`<asf-consumables .of=${record.id} .list=${consumables}></asf-consumables>` : nothing}
      ${this.lies()}${this.notes()}
      ${consumables.length ? nothing : html`<asf-consumables .of=${record.id} .list=${consumables}></asf-consumables>`}`;
  }

  /** The way to it, with the photo of the place; what is on lies nowhere, and the new one not where the old one does. */
  private lies(): TemplateResult | typeof nothing {
    const say = words().refit.onStep;
    const { step, record, assembly = 'none' } = this.view;
    const { place } = step.line;
    const last = place.at(-1);
    if (!last && (step.state === 'fitted' || step.state === 'tried')) return nothing;
    const value = last ? html`${place.slice(0, -1).map((name) => `${name} · `)}<b>${last}</b>` : say.nowhere;
    return html`<a class="sheet-link" href=${openedFrom(`#/where/${record.id}`, `refit/${assembly}?step=${record.id}`)}><span class="section-label">${step.brings_new ? say.oldLies : say.lies}</span><span class="sheet-link-value">${value}</span><asf-icon name="next" size="20"></asf-icon></a>`;
  }

  // ---- notes ----

  private get key(): string {
    return `part/${this.view.record.id}/note`;
  }

  private notes(): TemplateResult {
    const say = words().refit.onStep;
    const notes = this.view.notes.filter(({ record }) => !record.struck);
    return html`<asf-section .label=${say.notes}>
      ${notes.map(({ record, slices }) => html`<div class="note">${slices.length ? html`<asf-spoken .slices=${slices}></asf-spoken>` : nothing}${record.values.text ? html`<p class="note-text">${record.values.text}</p>` : nothing}${record.values.taken === undefined ? nothing : html`<p class="second">${moment(new Date(record.values.taken))}</p>`}</div>`)}
      <form class="note-new" @submit=${this.putNote}><asf-field kind="area" .label=${say.addNote} .value=${this.note} max="5000" @input=${this.typed}></asf-field>
        ${this.note.trim() ? html`<asf-button kind="submit" icon="note" word=${say.putNote}></asf-button>` : nothing}</form></asf-section>`;
  }

  private readonly typed = (event: Event): void => {
    if (!(event.target instanceof HTMLTextAreaElement)) return;
    this.note = event.target.value;
    if (this.note) journal.typing(this.key, this.note);
    else journal.typed(this.key);
  };

  private readonly putNote = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { key } = this;
    const text = this.note.trim();
    // A second tap while the first is on its way would put it down twice.
    if (!text || this.busy) return;
    this.busy = true;
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'note', changes: [{ of: this.view.record.id }, { text }, { taken: Date.now() }] }, words().refit.onStep.noteDone).finally(() => { this.busy = false; });
    if (!ok) return;
    journal.typed(key);
    if (this.key === key) this.note = '';
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-step-body': StepBody } }
