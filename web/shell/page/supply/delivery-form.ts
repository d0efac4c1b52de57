import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Id, RecordView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept, keepForm } from '../form-kept';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/field';
import { isHalf } from '../kit/half-day';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { write } from '../sheet/write';
import { today } from '../today';
import { words } from '../words';
import { readNumber } from '../words/read';
import { draftOf, readDelivery, type DeliveryDraft } from './delivery-draft';

/** New pieces put down: from whom, how many, when they are due; or one such line changed. Tells `asf-put` once it is. */
@customElement('asf-delivery-form')
export class DeliveryForm extends LightElement {
  @property() partId: Id = '';
  /** How many pieces the part has. */
  @property({ type: Number }) wanted = 1;
  /** The one that is changed; a new one without. */
  @property({ attribute: false }) record: RecordView | undefined;
  @state() private draft!: DeliveryDraft;
  @state() private wrong = '';
  private begun!: DeliveryDraft;
  private seen: RecordView | undefined;
  private busy = false;
  private readonly suppliers = new Live(this, 'suppliers', () => ({ ask: 'suppliers' }));

  private get key(): string { return `delivery/${this.record?.id ?? this.partId}`; }

  override willUpdate(): void {
    if (this.hasUpdated) return;
    this.seen = this.record;
    this.begun = draftOf(this.record, this.wanted);
    this.draft = formKept(this.key, this.begun);
  }

  override render(): TemplateResult {
    const say = words().supply;
    const { draft } = this;
    const names = (this.suppliers.view?.suppliers ?? []).map(({ record }) => record.values.name ?? '').filter(Boolean);
    return html`<form class="place-form" novalidate @submit=${this.put}>
      <asf-field .label=${say.from} .hint=${say.fromHint} .value=${draft.from} .suggestions=${names} max="200" @input=${(event: Event) => { this.keep({ from: textOf(event) }); }}></asf-field>
      <asf-field kind="number" .label=${say.quantity} .value=${draft.quantity} .error=${this.wrong} max="6" @input=${(event: Event) => { this.keep({ quantity: textOf(event) }); }}></asf-field>
      <asf-field kind="day" .label=${say.due} .hint=${say.dueHint} .value=${draft.due} @input=${(event: Event) => { this.keep({ due: textOf(event) }); }}></asf-field>
      <asf-choice columns="2" .label=${say.isIn} .options=${[{ value: '', word: say.notYet }, { value: 'yes', word: say.here }]} .value=${draft.here} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ here: event.detail.value }); }}></asf-choice>
      ${draft.here ? html`<asf-field kind="day" .label=${say.inDay} .value=${draft.arrived || today()} @input=${(event: Event) => { this.keep({ arrived: textOf(event) }); }}></asf-field>` : nothing}
      <asf-primary small kind="submit" .verb=${say.put} icon="check"></asf-primary></form>`;
  }

  private keep(change: Partial<DeliveryDraft>): void {
    this.draft = { ...this.draft, ...change } as DeliveryDraft;
    this.wrong = '';
    // A day of arrival is one only where it is here.
    keepForm(this.key, this.begun, this.draft, [['here', 'arrived']]);
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().supply;
    const changes = readDelivery(this.draft, this.seen, today());
    if (!changes) {
      this.wrong = say.wrongCount;
      return;
    }
    if (this.busy || isHalf(this)) return;
    this.busy = true;
    try {
      if (!await this.store(changes)) return;
    } finally {
      this.busy = false;
    }
    journal.typed(this.key);
    this.tell('asf-put', null);
  };

  private async store(changes: Change[]): Promise<boolean> {
    const say = words().supply;
    if (this.seen) return changes.length === 0 || write(this.seen, changes, say.changed);
    const pieces = readNumber(this.draft.quantity) ?? 1;
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'delivery', changes: [{ of: this.partId }, { taken: Date.now() }, ...changes] }, this.draft.here ? say.doneIn(pieces) : say.done(pieces));
    return ok;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-delivery-form': DeliveryForm } }
