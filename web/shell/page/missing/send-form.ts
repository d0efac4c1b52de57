import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { OutFor } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import '../kit/choice';
import '../kit/dialog';
import '../kit/field';
import { isHalf } from '../kit/half-day';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { words } from '../words';

/** A part leaves the house: for work or on loan, with whom, and until when. Tells `asf-close`. */
@customElement('asf-send-form')
export class SendForm extends LightElement {
  @property({ type: Boolean }) open = false;
  @property() partId = '';
  @property() name = '';
  @state() private outFor: OutFor = 'work';
  @state() private who = '';
  @state() private due = '';
  private busy = false;
  private readonly suppliers = new Live(this, 'suppliers', () => (this.open ? { ask: 'suppliers' } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('open') || !this.open) return;
    [this.outFor, this.who, this.due] = ['work', '', ''];
    this.suppliers.soon();
  }

  override render(): TemplateResult {
    const say = words().where.house;
    return html`<asf-dialog .open=${this.open} .label=${say.sendTitle(this.name)} .body=${this.open ? this.form() : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog>`;
  }

  private form(): TemplateResult {
    const say = words().where.house;
    const names = (this.suppliers.view?.suppliers ?? []).flatMap(({ record }) => record.values.name ?? []);
    return html`<form class="place-form" @submit=${this.submitted}>
      <asf-choice columns="2" .label=${say.for} .options=${(['work', 'loan'] as const).map((value) => ({ value, word: say.fors[value] }))} .value=${this.outFor} @asf-change=${(event: CustomEvent<{ value: OutFor }>) => { this.outFor = event.detail.value; }}></asf-choice>
      <asf-field .label=${say.who} max="200" .value=${this.who} .suggestions=${names} @input=${(event: Event) => { this.who = textOf(event); }}></asf-field>
      <asf-field kind="day" .label=${say.day} .hint=${say.dayHint} .value=${this.due} @input=${(event: Event) => { this.due = textOf(event); }}></asf-field>
      <asf-primary small kind="submit" .verb=${say.go} icon="check"></asf-primary></form>`;
  }

  private readonly submitted = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (this.busy || isHalf(this)) return;
    this.busy = true;
    const who = this.who.trim();
    try {
      const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'outing', changes: [
        { of: this.partId }, { out_for: this.outFor }, { taken: Date.now() }, ...(who ? [{ who }] : []), ...(this.due ? [{ due: this.due }] : []),
      ] }, words().where.house.gone(this.name));
      if (ok) this.open = false;
    } finally {
      this.busy = false;
    }
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-send-form': SendForm } }
