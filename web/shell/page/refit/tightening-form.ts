import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { RecordView, TorqueUnit, Units } from '../../bridge/protocol';
import { textOf } from '../field-text';
import { formKept, keepForm } from '../form-kept';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/field';
import { isHalf } from '../kit/half-day';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { write } from '../sheet/write';
import { words } from '../words';
import { draftOf, readTightening, type ReadTorque, type TighteningDraft, type TighteningErrors, type TighteningMember } from './tightening-draft';
import { isTorqueUnit, TORQUE_UNITS, torqueSign, torqueUnit } from './torque';

/** How tight a joint or a piece of it is to be, put down. Tells `asf-put` once it is. */
@customElement('asf-tightening-form')
export class TighteningForm extends LightElement {
  @property({ attribute: false }) record!: RecordView;
  @property() units: Units = 'metric';
  @state() private draft!: TighteningDraft;
  @state() private errors: TighteningErrors = {};
  private begun!: TighteningDraft;
  private seen!: RecordView;
  private busy = false;

  private get key(): string { return `tightening/${this.record.id}`; }
  private get isPiece(): boolean { return this.record.kind === 'piece'; }

  override willUpdate(): void {
    if (this.hasUpdated) return;
    this.seen = this.record;
    this.begun = draftOf(this.record, torqueUnit(this.units));
    this.draft = formKept(this.key, this.begun);
  }

  override render(): TemplateResult {
    const say = words().tightening;
    const { draft } = this;
    return html`<form class="place-form" novalidate @submit=${this.put}>
      ${this.field('torque', say.figure, say.figureHint, this.errors.torque)}
      <asf-choice compact columns="2" .label=${say.figure} hide-label .options=${TORQUE_UNITS.map((value) => ({ value, word: torqueSign(value) }))} .value=${draft.unit} @asf-change=${(event: CustomEvent<{ value: TorqueUnit }>) => { this.keep({ unit: event.detail.value }); }}></asf-choice>
      <asf-choice compact columns="3" .label=${say.lubrication} .options=${(['dry', 'oiled', ''] as const).map((value) => ({ value, word: say.lubrications[value] }))} .value=${draft.lubrication} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ lubrication: event.detail.value }); }}></asf-choice>
      ${this.field('remark', say.remark, say.remarkHint)}
      ${this.field('source', say.source, say.sourceHint)}
      ${this.isPiece ? this.ofPiece() : html`<asf-choice compact columns="2" .label=${say.height} .options=${(['now', 'height'] as const).map((value) => ({ value, word: say.heights[value] }))} .value=${draft.height} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ height: event.detail.value }); }}></asf-choice>`}
      ${this.field('stages', say.stages, say.stagesHint)}
      ${this.field('angle', say.angle, say.angleHint, this.errors.angle, say.degrees)}
      ${this.field('sequence', say.sequence, say.sequenceHint)}
      ${this.field('compound', say.compound, say.compoundHint)}
      <asf-primary small kind="submit" .verb=${say.put} icon="check"></asf-primary></form>`;
  }

  private ofPiece(): TemplateResult {
    const say = words().tightening;
    const { draft } = this;
    return html`<asf-choice compact columns="3" .label=${say.renew} .options=${(['new', 'old', ''] as const).map((value) => ({ value, word: say.renews[value] }))} .value=${draft.renew} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ renew: event.detail.value }); }}></asf-choice>
      ${draft.renew === 'old' ? nothing : html`${this.field('here', say.here, say.hereHint, this.errors.here)}
        <asf-field kind="day" .label=${say.due} .value=${draft.due} @input=${(event: Event) => { this.keep({ due: textOf(event) }); }}></asf-field>`}`;
  }

  private field(member: TighteningMember, label: string, hint: string, error = '', unit = ''): TemplateResult {
    const figures = member === 'angle' || member === 'here';
    return html`<asf-field .kind=${figures ? 'number' : 'text'} .label=${label} .hint=${hint} .error=${error} .unit=${unit} .value=${this.draft[member] ?? ''} max="300" @input=${(event: Event) => { this.keep({ [member]: textOf(event) }); }}></asf-field>`;
  }

  private keep(change: Partial<TighteningDraft>): void {
    this.draft = { ...this.draft, ...change } as TighteningDraft;
    this.errors = {};
    // A figure is one only with its unit.
    keepForm(this.key, this.begun, this.draft, [['torque', 'unit']]);
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (this.busy || isHalf(this)) return;
    this.busy = true;
    try {
      if (!await this.store()) return;
    } finally {
      this.busy = false;
    }
    journal.typed(this.key);
    this.tell('asf-put', null);
  };

  /** True once it is stored, or nothing differs. */
  private async store(): Promise<boolean> {
    const say = words().tightening;
    const torque = await this.readFigure();
    const { changes, wrong } = readTightening(this.draft, this.begun, torque === 'unread' ? {} : torque ?? {}, { piece: this.isPiece });
    this.errors = { ...(torque === 'unread' ? { torque: say.unread } : torque === null && { torque: say.notTorque }), ...(wrong.includes('angle') && { angle: say.wrongAngle }), ...(wrong.includes('here') && { here: say.wrongCount }) };
    if (Object.keys(this.errors).length > 0) {
      await this.updateComplete;
      await new Promise((soon) => { requestAnimationFrame(soon); });
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return false;
    }
    return changes.length === 0 || write(this.seen, changes, say.done(this.record.values.name ? this.record.values.name : say.title));
  }

  /** What the core makes of the figure; null where it makes nothing of it, 'unread' where it gave no answer. */
  private async readFigure(): Promise<ReadTorque | null | 'unread'> {
    const text = this.draft.torque.trim();
    if (!text) return {};
    const view = await desk.ask({ ask: 'typed', text, unit: this.draft.unit }).catch(() => null);
    if (view === null) return 'unread';
    return view.view === 'typed' && view.amount !== undefined && isTorqueUnit(view.unit) ? { amount: view.amount, unit: view.unit } : null;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-tightening-form': TighteningForm } }
