import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { RecordView, RefitStepView, StepJoint, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import * as journal from '../journal';
import '../kit/button';
import '../kit/dialog';
import '../kit/field';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { noteOpen, openBefore } from '../reopening';
import '../sheet/spoken';
import { words } from '../words';
import { moment } from '../words/format';
import './consumables';
import { figuresOf, hasFigure, pieceRow } from './hardware';
import './tightening-form';

/** What is wanted at a step: hardware and figures joint by joint, what it uses up, where it lies, what was noted. */
@customElement('asf-step-body')
export class StepBody extends LightElement {
  @property({ attribute: false }) view!: RefitStepView;
  @property() units: Units = 'metric';
  /** The joint or piece whose figures stand open. */
  @state() private open = '';
  @state() private note = '';
  private shown = '';

  override willUpdate(): void {
    const { id } = this.view.record;
    if (id === this.shown) return;
    this.shown = id;
    this.note = journal.typedBefore(this.key) ?? '';
    this.open = openBefore(`refit/${id}`);
  }

  override render(): TemplateResult {
    const say = words().refit.onStep;
    const { joints, consumables, record } = this.view;
    const open = this.opened();
    return html`${joints.length ? joints.map((joint) => this.joint(joint)) : html`<asf-section .label=${say.hardware} .count=${say.noHardware}></asf-section>`}
      <a class="rf-loose" href="#/refit/loose"><asf-icon name="loose"></asf-icon><span><b>${this.view.loose ? words().refit.loose.inAssembly(this.view.loose) : words().refit.loose.noneInAssembly}</b> ${say.looseHere}</span><asf-icon name="next" size="20"></asf-icon></a>
      ${consumables.length ? html`<asf-consumables .of=${record.id} .list=${consumables}></asf-consumables>` : nothing}
      ${this.lies()}${this.notes()}
      ${consumables.length ? nothing : html`<asf-consumables .of=${record.id} .list=${consumables}></asf-consumables>`}
      <asf-dialog .open=${open !== undefined} .label=${open ? words().tightening.of(open.name) : ''} .body=${open ? html`<asf-tightening-form .record=${open.record} .units=${this.units} @asf-put=${() => { this.hold(''); }}></asf-tightening-form>` : nothing} @asf-close=${() => { this.hold(''); }}></asf-dialog>`;
  }

  /** It stands open again after a kill. */
  private hold(open: string): void {
    this.open = open;
    noteOpen(`refit/${this.shown}`, open);
  }

  private opened(): { record: RecordView; name: string } | undefined {
    const say = words().tightening;
    for (const joint of this.view.joints) {
      if (joint.record.id === this.open) return { record: joint.record, name: say.joint(joint.record.values.name ?? '') };
      const piece = joint.pieces.find(({ record }) => record.id === this.open);
      if (piece) return { record: piece.record, name: piece.record.values.name ?? words().refit.onStep.pieceUnnamed };
    }
    return undefined;
  }

  private joint(joint: StepJoint): TemplateResult {
    const say = words().refit.onStep;
    const { record } = joint;
    const { name = '', bag = '', tightened } = record.values;
    const figures = figuresOf(joint);
    const state = tightened ? words().tightening.states[tightened] : '';
    return html`<section class="rf-joint" aria-label=${say.joint(name, bag)}>
      ${this.view.joints.length > 1 || bag || tightened ? html`<h3 class="rf-joint-name"><span>${say.joint(name, bag)}</span><span class="second">${[state, record.values.checked_again ? words().tightening.checked : ''].filter(Boolean).join(', ')}</span></h3>` : nothing}
      ${pieceRow(joint, this.units === 'inch')}
      ${figures.length ? html`<div class="rf-figures">${figures}</div>` : nothing}
      <div class="rf-joint-ways">${hasFigure(record) || figures.length === 0 ? this.edit(record, figures.length ? say.changeFigure : say.addFigure, say.joint(name, '')) : nothing}
        ${joint.pieces.filter((piece) => hasFigure(piece.record)).map((piece) => this.edit(piece.record, say.changeFigure, piece.record.values.name ?? say.pieceUnnamed))}
        <asf-button compact plain word=${say.anotherJoint} label="${say.anotherJoint}: ${say.joint(name, '')}" href=${`#/joint/${record.id}`}></asf-button></div></section>`;
  }

  private edit(record: RecordView, word: string, name: string): TemplateResult {
    return html`<asf-button compact plain word=${word} label="${word}: ${name}" @click=${() => { this.hold(record.id); }}></asf-button>`;
  }

  private lies(): TemplateResult {
    const say = words().refit.onStep;
    const { place } = this.view.step.line;
    const last = place.at(-1);
    const id = this.view.record.values.place;
    const value = last ? html`${place.slice(0, -1).map((name) => `${name} · `)}<b>${last}</b>` : say.nowhere;
    return html`<a class="sheet-link" href=${id ? `#/stores/${id}` : `#/part/${this.view.record.id}`}><span class="section-label">${say.lies}</span><span class="sheet-link-value">${value}</span><asf-icon name="next" size="20"></asf-icon></a>`;
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
    if (!text) return;
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'note', changes: [{ of: this.view.record.id }, { text }, { taken: Date.now() }] }, words().refit.onStep.noteDone);
    if (!ok) return;
    journal.typed(key);
    if (this.key === key) this.note = '';
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-step-body': StepBody } }
