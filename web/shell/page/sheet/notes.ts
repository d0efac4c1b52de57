import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { NoteView, PartView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { moment, number } from '../words/format';
import './spoken';

/** Notes, typed and spoken, and a field for the next one. */
@customElement('asf-sheet-notes')
export class SheetNotes extends LightElement {
  @property({ attribute: false }) view?: PartView;
  @state() private text = '';
  private keyShown = '';

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('view') || this.keyShown === this.key) return;
    this.keyShown = this.key;
    this.text = journal.typedBefore(this.key) ?? '';
  }

  override render(): TemplateResult {
    const say = words().sheet.notes;
    const notes = (this.view?.notes ?? []).filter(({ record }) => !record.struck);
    return html`<asf-section .label=${say.title} .count=${notes.length ? number(notes.length) : say.none}>
      <ul class="notes">${notes.map((note) => html`<li class="note">${this.note(note)}</li>`)}</ul>
      <form class="note-new" @submit=${this.put}>
        <asf-field kind="area" .label=${say.add} .value=${this.text} max="5000" @input=${this.typed}></asf-field>
        ${this.text.trim() ? html`<asf-button kind="submit" icon="note" word=${say.put}></asf-button>` : nothing}
      </form></asf-section>`;
  }

  private get key(): string {
    return `part/${this.view?.record.id ?? ''}/note`;
  }

  private note({ record, slices }: NoteView): TemplateResult {
    const say = words().sheet.notes;
    const { taken, text } = record.values;
    return html`${slices.length ? html`<asf-spoken .slices=${slices}></asf-spoken>` : nothing}
      ${text ? html`<p class="note-text">${text}</p>` : nothing}
      <p class="note-foot second">${taken === undefined ? nothing : moment(new Date(taken))}
        <asf-button compact plain word=${say.strike} @click=${() => { void strikeOut(record, say.struck); }}></asf-button></p>`;
  }

  private readonly typed = (event: Event): void => {
    if (!(event.target instanceof HTMLTextAreaElement)) return;
    this.text = event.target.value;
    if (this.text) journal.typing(this.key, this.text);
    else journal.typed(this.key);
  };

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const text = this.text.trim();
    const { key } = this;
    if (!this.view || !text) return;
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'note', changes: [{ of: this.view.record.id }, { text }, { taken: Date.now() }] }, words().sheet.notes.put_done);
    if (!ok) return;
    journal.typed(key);
    if (this.key === key) this.text = '';
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-notes': SheetNotes } }
