import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { JointView, PartView, RecordView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { number } from '../words/format';

/** What holds it: the pieces of each joint in the order they came off. */
@customElement('asf-sheet-joints')
export class SheetJoints extends LightElement {
  @property({ attribute: false }) view?: PartView;

  override render(): TemplateResult {
    const say = words().sheet.joints;
    const joints = this.view?.joints ?? [];
    return html`<asf-section .label=${say.title} .count=${joints.length ? say.order : say.none}>${joints.map((joint) => this.joint(joint))}</asf-section>`;
  }

  private joint({ record, pieces }: JointView): TemplateResult {
    const say = words().sheet.joints;
    const { name, bag } = record.values;
    return html`<div class="joint"><h3 class="joint-name"><a href=${openedFrom(`#/joint/${record.id}`, `part/${this.view?.record.id ?? ''}`)}>${name || say.noName}</a>${bag ? html` <span class="second">${say.bag(bag)}</span>` : nothing}</h3>
      <ol class="joint-pieces">${pieces.filter(({ struck }) => !struck).map((piece) => html`<li>${pieceWords(piece)}</li>`)}</ol></div>`;
  }
}

function pieceWords({ values }: RecordView): string {
  const { name, quantity = 1, size, thickness, side } = values;
  const thick = thickness === undefined ? '' : `${number(thickness / 1000, 3)}\u00a0mm`;
  const pieces = [name || words().sheet.joints.piece, size, thick, side ? words().sides[side] : ''].filter(Boolean).join(', ');
  return quantity > 1 ? `${quantity} × ${pieces}` : pieces;
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-joints': SheetJoints } }
