import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { RecordView, RefitStepView, StepJoint, Units } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/button';
import '../kit/dialog';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { noteOpen, openBefore } from '../reopening';
import { words } from '../words';
import { figuresOf, hasFigure, pieceRow } from './hardware';
import './tightening-form';

/** The hardware of a step joint by joint, and how tight: what the hands ask for first. */
@customElement('asf-step-hardware')
export class StepHardware extends LightElement {
  @property({ attribute: false }) view!: RefitStepView;
  @property() units: Units = 'metric';
  /** Where the step stands, for the way back to it. */
  @property() here = '';
  /** The joint or piece whose figures stand open. */
  @state() private open = '';
  private shown = '';

  override willUpdate(): void {
    const { id } = this.view.record;
    if (id === this.shown) return;
    this.shown = id;
    this.open = openBefore(`refit/${id}`);
  }

  override render(): TemplateResult {
    const say = words().refit.onStep;
    const { joints } = this.view;
    const open = this.opened();
    return html`${joints.length ? joints.map((joint) => this.joint(joint)) : html`<asf-section .label=${say.hardware} .count=${say.noHardware}></asf-section>`}
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
    const isNamed = this.view.joints.length > 1 || Boolean(bag) || tightened !== undefined;
    const figures = figuresOf(joint, isNamed);
    const state = tightened ? words().tightening.states[tightened] : '';
    return html`<section class="rf-joint" aria-label=${say.joint(name, bag)}>
      ${isNamed ? html`<h3 class="rf-joint-name"><span>${say.joint(name, bag)}</span><span class="second">${[state, record.values.checked_again ? words().tightening.checked : ''].filter(Boolean).join(', ')}</span></h3>` : nothing}
      ${pieceRow(joint, this.units === 'inch')}
      ${figures.length ? html`<div class="rf-figures">${figures}</div>` : nothing}
      <div class="rf-joint-ways">${hasFigure(record) || figures.length === 0 ? this.edit(record, figures.length ? say.changeFigure : say.addFigure, say.joint(name, '')) : nothing}
        ${joint.pieces.filter((piece) => hasFigure(piece.record)).map((piece) => this.edit(piece.record, say.changeFigure, piece.record.values.name ?? say.pieceUnnamed))}
        <asf-button plain word=${say.openJoint} label="${say.openJoint}: ${say.joint(name, '')}" href=${openedFrom(`#/joint/${record.id}`, this.here)}></asf-button></div></section>`;
  }

  private edit(record: RecordView, word: string, name: string): TemplateResult {
    return html`<asf-button plain word=${word} label="${word}: ${name}" @click=${() => { this.hold(record.id); }}></asf-button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-step-hardware': StepHardware } }
