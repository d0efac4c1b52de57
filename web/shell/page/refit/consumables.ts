import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Id, RecordView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import { isHalf } from '../kit/half-day';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Once } from '../once';
import { write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { readNumber } from '../words/read';
import { dayWords } from './when';

const EMPTY = { name: '', quantity: '1', due: '', here: '' };

/** What a part or an assembly uses up when it goes on: grease, sealant, copper washers; whether it is here. */
@customElement('asf-consumables')
export class Consumables extends LightElement {
  /** The part, joint or assembly. */
  @property() of: Id = '';
  @property({ attribute: false }) list: readonly RecordView[] = [];
  @state() private adding = false;
  @state() private draft = EMPTY;
  @state() private errors: { name?: string; quantity?: string } = {};
  private shown = '';
  private readonly once = new Once();

  private get key(): string { return `consumable/${this.of}`; }

  override willUpdate(): void {
    if (this.of === this.shown) return;
    this.shown = this.of;
    this.draft = formKept(this.key, EMPTY);
    this.adding = journal.typedBefore(this.key) !== null;
  }

  override render(): TemplateResult {
    const say = words().refit.consumables;
    return html`<asf-section .label=${say.title} .count=${this.list.length ? '' : say.none}>
      <ul class="rf-uses">${this.list.map((record) => html`<li class="rf-use">${this.line(record)}</li>`)}</ul>
      ${this.adding ? this.form() : html`<asf-button plain icon="add" word=${say.add} @click=${() => { this.adding = true; }}></asf-button>`}</asf-section>`;
  }

  private line(record: RecordView): TemplateResult {
    const say = words().refit.consumables;
    const { name = '', quantity = 1, in_hand = 0, due } = record.values;
    const isHere = in_hand >= quantity;
    const state = isHere ? say.isHere : in_hand > 0 ? say.some(in_hand, quantity) : say.notHere;
    return html`<span class="row-words"><span class="row-name">${quantity > 1 ? `${quantity} × ${name}` : name}</span>
        <span class="row-second"><asf-icon name=${isHere ? 'check' : 'not-proved'} size="20"></asf-icon> ${[state, !isHere && due ? say.dueOn(dayWords(due)) : ''].filter(Boolean).join(', ')}</span></span>
      <span class="rf-use-ways"><asf-button word=${isHere ? say.out : say.itIsHere} label="${isHere ? say.out : say.itIsHere}: ${name}" @click=${() => { void write(record, [{ in_hand: isHere ? 0 : quantity }], isHere ? say.setNot(name) : say.setHere(name)); }}></asf-button>
      <asf-button plain icon="strike" word=${say.strike} label="${say.strike}: ${name}" @click=${() => { void strikeOut(record, say.struck(name)); }}></asf-button></span>`;
  }

  private form(): TemplateResult {
    const say = words().refit.consumables;
    const { draft, errors } = this;
    return html`<form class="place-form" novalidate @submit=${this.put}>
      <asf-field .label=${say.name} .value=${draft.name} .error=${errors.name ?? ''} .suggestions=${say.likely} max="200" @input=${(event: Event) => { this.keep({ name: textOf(event) }); }}></asf-field>
      <asf-field kind="number" .label=${say.quantity} .value=${draft.quantity} .error=${errors.quantity ?? ''} max="5" @input=${(event: Event) => { this.keep({ quantity: textOf(event) }); }}></asf-field>
      <asf-choice compact columns="2" .label=${say.here} .options=${[{ value: 'yes', word: say.isHere }, { value: '', word: say.notHere }]} .value=${draft.here} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ here: event.detail.value }); }}></asf-choice>
      ${draft.here ? nothing : html`<asf-field kind="day" .label=${say.due} .value=${draft.due} @input=${(event: Event) => { this.keep({ due: textOf(event) }); }}></asf-field>`}
      <div class="pair"><asf-button kind="submit" icon="check" word=${say.put}></asf-button><asf-button word=${words().kit.close} @click=${this.leave}></asf-button></div></form>`;
  }

  private keep(change: Partial<typeof EMPTY>): void {
    this.draft = { ...this.draft, ...change };
    this.errors = {};
    journal.typing(this.key, JSON.stringify(this.draft));
  }

  private readonly leave = (): void => {
    this.adding = false;
    this.draft = EMPTY;
    journal.typed(this.key);
  };

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().refit.consumables;
    const name = this.draft.name.trim();
    const quantity = readNumber(this.draft.quantity);
    const isWhole = quantity !== null && Number.isInteger(quantity) && quantity >= 1;
    this.errors = { ...(!name && { name: say.needsName }), ...(!isWhole && { quantity: say.wrongCount }) };
    if (!name || !isWhole || isHalf(this)) return;
    const { here, due } = this.draft;
    const changes: Change[] = [{ of: this.of }, { name }, { quantity }, ...(here ? [{ in_hand: quantity }] : due ? [{ due }] : [])];
    await this.once.run('put', undefined, async () => {
      const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'consumable', changes }, say.done(name));
      if (ok) this.leave();
      return ok;
    });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-consumables': Consumables } }
