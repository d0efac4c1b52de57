import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, newId } from '../../bridge/desk';
import type { Change, JointView, RecordView } from '../../bridge/protocol';
import { backOf } from '../back-of';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import '../styles/assemblies.css';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { findJoint } from './find-joint';
import './how-tight';
import './piece';

/** The hardware of one joint, in the order it came off. */
@customElement('asf-place-joint')
export class JointPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private joint: JointView | null = null;
  @state() private inch = false;
  @state() private read = false;
  /** The piece whose sheet stands open. */
  @state() private open: string | null = null;
  private asked = '';

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('changed', this.look);
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('changed', this.look);
    super.disconnectedCallback();
  }

  override willUpdate(): void {
    if (this.address.id === this.asked) return;
    this.asked = this.address.id ?? '';
    void this.look();
  }

  override render(): TemplateResult {
    const text = words().joints;
    const { joint, back } = this;
    if (!joint) {
      return html`<asf-head .name=${text.title('')} back=${back}></asf-head>
        <div class="body">${this.read ? html`<asf-empty .first=${text.gone.first} .then=${text.gone.then}><asf-button icon="teardown" word=${text.gone.go} href="#/teardown"></asf-button></asf-empty>` : nothing}</div>`;
    }
    const { values } = joint.record;
    const pieces = this.pieces;
    return html`<asf-head .name=${text.title(values.name ?? '')} .second=${text.second(pieces.length)} back=${back}></asf-head>
      <div class="body">
        ${pieces.length === 0 ? html`<asf-empty .first=${text.none.first} .then=${text.none.then}></asf-empty>` : nothing}
        <ol class="jt-pieces">${pieces.map((piece, i) => html`<li><asf-piece .piece=${piece} .number=${i + 1} .last=${i === pieces.length - 1} .inch=${this.inch} ?open=${this.open === piece.id}
          @asf-open=${() => { this.open = this.open === piece.id ? null : piece.id; }} @asf-move=${(event: CustomEvent<{ by: number }>) => { this.move(i, event.detail.by); }}></asf-piece></li>`)}</ol>
        <asf-how-tight .joint=${joint} .inch=${this.inch}></asf-how-tight>
        <asf-section .label=${text.bagAndName}>
          ${this.field('bag', text.bag, text.bagHint)}
          ${this.field('name', text.name, text.nameHint)}
        </asf-section>
        <asf-button icon="strike" word=${text.strike} label="${text.strike}, ${text.title(values.name ?? '')}" @click=${this.strike}></asf-button>
      </div>
      <div class="foot"><asf-primary verb=${text.next} icon="add" @click=${this.add}></asf-primary></div>`;
  }

  private get back(): string { return backOf(this.address, '#/teardown'); }

  private get pieces(): readonly RecordView[] {
    return (this.joint?.pieces ?? []).filter(({ struck }) => !struck);
  }

  private field(which: 'bag' | 'name', label: string, hint: string): TemplateResult {
    const { id, values } = this.joint?.record ?? { id: '', values: {} };
    const key = `${which}:${id}`;
    return html`<asf-field label=${label} hint=${hint} .value=${journal.typedBefore(key) ?? values[which] ?? ''}
      @input=${(event: Event) => { journal.typing(key, textOf(event)); }}
      @change=${(event: Event) => {
        const value = textOf(event).trim();
        void this.write(id, which === 'bag' ? { bag: value } : { name: value }).then((ok) => { if (ok) journal.typed(key); });
      }}></asf-field>`;
  }

  private async write(id: string, change: Change): Promise<boolean> {
    const { ok } = await carryOut({ do: 'change', ids: [id], changes: [change] });
    return ok;
  }

  private readonly add = async (): Promise<void> => {
    if (!this.joint) return;
    const id = newId();
    const order = Math.max(0, ...this.joint.pieces.map(({ values }) => values.order ?? 0)) + 1;
    const { ok } = await carryOut({ do: 'create', id, kind: 'piece', changes: [{ joint: this.joint.record.id }, { order }] }, words().joints.added(this.pieces.length + 1));
    if (ok) this.open = id;
  };

  // The two change places; one command, so that the order is never half written.
  private move(at: number, by: number): void {
    const [one, other] = [this.pieces[at], this.pieces[at + by]];
    if (!one || !other) return;
    const [first, second] = [one.values.order ?? at + 1, other.values.order ?? at + by + 1];
    const text = words().joints;
    void carryOut({ do: 'all', commands: [
      { do: 'change', ids: [one.id], changes: [{ order: second === first ? first + by : second }] },
      { do: 'change', ids: [other.id], changes: [{ order: first }] },
    ] }, text.moved(one.values.name ?? text.piece(at + 1)));
  }

  private readonly strike = async (): Promise<void> => {
    if (!this.joint) return;
    const { record } = this.joint;
    if (await strikeOut(record, words().joints.struck(words().joints.title(record.values.name ?? '')))) location.hash = this.back;
  };

  private readonly look = async (): Promise<void> => {
    const id = this.asked;
    const found = await findJoint(id);
    if (id !== this.asked) return;
    this.joint = found.joint;
    this.inch = found.inch;
    this.read = true;
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-joint': JointPlace } }
