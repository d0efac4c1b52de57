import { html, nothing, type TemplateResult } from 'lit';
import type { RecordView, StepJoint, StepPiece, Values } from '../../bridge/protocol';
import '../kit/button';
import { thickness } from '../joints/thickness';
import { words } from '../words';
import { capital } from '../words/format';
import { pieceDrawings, pieceShape } from './piece-drawing';
import { torqueFigure, torqueSign } from './torque';

/** The pieces of a joint in the order they go on, drawn, with their numbers; what is renewed is bold. */
export function pieceRow({ pieces }: StepJoint, inch: boolean): TemplateResult | typeof nothing {
  if (pieces.length === 0) return nothing;
  return html`<ol class="hw-row">${pieces.map((piece, i) => html`<li class="hw-piece ${piece.renew ? 'hw-new' : ''}">
    <span class="hw-drawn"><b class="hw-number" aria-hidden="true">${i + 1}</b><svg class="hw-drawing" viewBox="0 0 64 64" aria-hidden="true">${pieceDrawings[pieceShape(piece.record.values.name ?? '')]}</svg></span>
    <span class="hw-name">${pieceName(piece, inch)}</span></li>`)}</ol>`;
}

/** "split pin, new"; with how many alike, its size, its side. */
function pieceName({ record: { values }, renew }: StepPiece, inch: boolean): string {
  const say = words().refit.onStep;
  const { name, quantity = 1, size, thickness: thick, side } = values;
  const parts = [`${quantity > 1 ? `${quantity} × ` : ''}${name ? lower(name) : say.pieceUnnamed}`, size, thick === undefined ? '' : thickness(thick, inch), side ? words().sides[side] : '', renew ? say.another : ''];
  // A shim is often called by its thickness.
  return [...new Set(parts)].filter(Boolean).join(', ');
}

/** A name from the list begins with a capital; within a line it does not. "M8" and "O-ring" stay. */
function lower(name: string): string {
  return /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

/** What of a record says how it is tightened. */
export function hasFigure({ values }: RecordView): boolean {
  const { torque, angle, sequence, stages, lubrication, compound, torque_source } = values;
  return [torque, angle, sequence, stages, lubrication, compound, torque_source].some((value) => value !== undefined);
}

/** The figures of a joint: its own, and those of its pieces. Where its name stands above already it is not said again. */
export function figuresOf(joint: StepJoint, isNamed: boolean): TemplateResult[] {
  const say = words().tightening;
  const own = hasFigure(joint.record) || joint.record.values.remark ? [figure(joint.record, isNamed ? '' : say.joint(joint.record.values.name ?? ''), Boolean(joint.record.values.at_ride_height))] : [];
  return [...own, ...joint.pieces.filter(({ record }) => hasFigure(record)).map(({ record }) => figure(record, capital(record.values.name ?? words().refit.onStep.pieceUnnamed), own.length === 0 && Boolean(joint.record.values.at_ride_height)))];
}

/** One figure, large, with all that goes with it. Without a name the source stands among the words. */
export function figure({ values }: RecordView, name: string, atHeight: boolean): TemplateResult {
  const say = words().tightening;
  const { torque, torque_unit = 'newton-metre', torque_source, lubrication } = values;
  const where = [torque_source, lubrication ? say.lubrications[lubrication] : ''].filter(Boolean).join(' · ');
  const rest = inWords(values);
  return html`<div class="tq">${name ? html`<div class="tq-head"><b>${name}</b><span class="second">${where}</span></div>` : nothing}
    <div class="tq-line">${torque === undefined ? nothing : html`<span class="tq-figure"><b>${torqueFigure(torque, torque_unit)}</b>\u00a0<span class="tq-unit">${torqueSign(torque_unit)}</span></span>`}
      <div class="tq-words">${!name && where ? html`<p class="second">${where}</p>` : nothing}${atHeight ? html`<p><b>${say.atHeight}</b></p>` : nothing}${rest.map((text) => html`<p>${text}</p>`)}</div></div></div>`;
}

function inWords({ angle, sequence, stages, compound, remark }: Values): (TemplateResult | string)[] {
  const say = words().tightening;
  return [stages ? say.inStages(stages) : '', angle === undefined ? '' : html`<b>${say.angleSaid(angle)}</b>`, sequence ? say.inOrder(sequence) : '', compound ? say.withCompound(compound) : '', remark ?? ''].filter((text) => text !== '');
}

/** "54 N·m, 90° on": in a line of a list. */
export function figureInLine({ values }: RecordView): string {
  const say = words().tightening;
  const { torque, torque_unit = 'newton-metre', angle, lubrication } = values;
  return [torque === undefined ? '' : `${torqueFigure(torque, torque_unit)}\u00a0${torqueSign(torque_unit)}`, angle === undefined ? '' : say.angleSaid(angle), lubrication ? say.lubrications[lubrication] : ''].filter(Boolean).join(', ');
}
