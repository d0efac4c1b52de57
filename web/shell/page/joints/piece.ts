import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Change, RecordView, Side } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import { LightElement } from '../kit/light-element';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { readThickness, thickness } from './thickness';

/** One piece: closed a line, open its sheet. Tells `asf-open` and `asf-move`. */
@customElement('asf-piece')
export class Piece extends LightElement {
  @property({ attribute: false }) piece!: RecordView;
  @property({ type: Number }) number = 1;
  @property({ type: Boolean }) last = false;
  @property({ type: Boolean }) inch = false;
  @property({ type: Boolean }) open = false;
  @state() private error = '';

  override render(): TemplateResult {
    const text = words().joints;
    const { values } = this.piece;
    const said = [values.size, values.thickness === undefined ? '' : thickness(values.thickness, this.inch), values.side ? words().sides[values.side] : '', (values.quantity ?? 1) > 1 ? `× ${values.quantity}` : ''].filter(Boolean).join(' · ');
    return html`<div class="jt-piece"><button type="button" class="jt-open" aria-expanded=${this.open ? 'true' : 'false'} @click=${() => { this.tell('asf-open', null); }}>
      <b>${this.number}</b><span class="row-words"><span class="row-name">${values.name || text.unnamed}</span><span class="row-second">${said}</span></span>
      <asf-icon name=${this.open ? 'close' : 'next'}></asf-icon></button>${this.open ? this.sheet() : nothing}</div>`;
  }

  private sheet(): TemplateResult {
    const text = words().joints;
    const { values } = this.piece;
    const kinds = text.kinds;
    const count = values.quantity ?? 1;
    return html`
      <asf-choice .label=${text.what} columns="3" .value=${values.name ?? ''} .options=${kinds.map((value) => ({ value, word: value }))}
        @asf-change=${(event: CustomEvent<{ value: string }>) => { void this.write([{ name: event.detail.value }]); }}></asf-choice>
      ${this.field('name', text.other, '', (value) => [{ name: value }])}
      ${this.field('size', text.size, text.sizeHint, (value) => [{ size: value }])}
      <asf-field kind="number" label=${text.thickness} unit=${this.inch ? text.inch : text.mm} error=${this.error}
        .value=${journal.typedBefore(this.key('thickness')) ?? (values.thickness === undefined ? '' : thickness(values.thickness, this.inch, false))}
        @input=${(event: Event) => { journal.typing(this.key('thickness'), textOf(event)); this.error = ''; }} @change=${this.measured}></asf-field>
      <asf-choice .label=${text.side} columns="3" .value=${values.side ?? ''} .options=${(['left', 'right', ''] as const).map((value) => ({ value, word: text.sides[value] }))}
        @asf-change=${(event: CustomEvent<{ value: Side | '' }>) => { void this.write([event.detail.value === '' ? { clear: 'side' } : { side: event.detail.value }]); }}></asf-choice>
      <div role="group" aria-label=${text.quantity}><p class="choice-label">${text.quantity}</p><div class="td-step">
        <asf-button word="−" label=${words().teardown.more_.fewer} ?disabled=${count <= 1} @click=${() => { if (count > 1) void this.write([{ quantity: count - 1 }]); }}></asf-button>
        <output class="figure">${count}</output>
        <asf-button word="+" label=${words().teardown.more_.another} @click=${() => { void this.write([{ quantity: count + 1 }]); }}></asf-button></div></div>
      <div class="pair">
        <asf-button word=${text.earlier} ?disabled=${this.number === 1} @click=${() => { this.tell('asf-move', { by: -1 }); }}></asf-button>
        <asf-button word=${text.later} ?disabled=${this.last} @click=${() => { this.tell('asf-move', { by: 1 }); }}></asf-button>
        <asf-button icon="strike" word=${text.strike} label="${text.strike}, ${text.piece(this.number)}" @click=${() => { void strikeOut(this.piece, text.struck(values.name ?? text.piece(this.number))); }}></asf-button></div>`;
  }

  private field(which: 'name' | 'size', label: string, hint: string, change: (value: string) => Change[]): TemplateResult {
    const key = this.key(which);
    return html`<asf-field label=${label} hint=${hint} .value=${journal.typedBefore(key) ?? this.piece.values[which] ?? ''}
      @input=${(event: Event) => { journal.typing(key, textOf(event)); }}
      @change=${(event: Event) => { void this.write(change(textOf(event).trim())).then((ok) => { if (ok) journal.typed(key); }); }}></asf-field>`;
  }

  private readonly measured = async (event: Event): Promise<void> => {
    const typed = textOf(event).trim();
    const micrometres = readThickness(typed, this.inch);
    if (typed && micrometres === null) { this.error = words().joints.thicknessWrong; return; }
    if (await this.write([micrometres === null ? { clear: 'thickness' } : { thickness: micrometres }])) journal.typed(this.key('thickness'));
  };

  private async write(changes: Change[], message = ''): Promise<boolean> {
    const { ok } = await carryOut({ do: 'change', ids: [this.piece.id], changes }, message);
    return ok;
  }

  private key(field: string): string {
    return `piece:${this.piece.id}:${field}`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-piece': Piece } }
