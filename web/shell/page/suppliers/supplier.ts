import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Certainty, RecordView, SupplierLine } from '../../bridge/protocol';
import '../kit/button';
import '../kit/confidence';
import '../kit/dialog';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { noteOpen, openBefore } from '../reopening';
import { certaintyOf, confidenceOf } from '../routes/route-word';
import '../sheet/conflict';
import '../sheet/edit-line';
import { massText, massUnit } from '../sheet/mass';
import { putDown, write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import type { Confidence } from '../words/confidence';
import { KEEP, money } from '../words/format';
import { stanceChoice } from './stance';
import { readTerm, TERMS, termSaid, termText, type Term } from './terms';
import './tier-form';

const OPEN = 'suppliers/tier';

/** One supplier or specialist: what its name is, and on which terms one deals with it. */
@customElement('asf-supplier')
export class Supplier extends LightElement {
  @property({ attribute: false }) line!: SupplierLine;
  /** The tier that is changed; `new` for one more. */
  @state() private tier = '';
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override connectedCallback(): void {
    super.connectedCallback();
    const [supplier, tier = ''] = openBefore(OPEN).split('/');
    if (supplier && supplier === this.line.record.id) this.tier = tier;
  }

  override disconnectedCallback(): void {
    noteOpen(OPEN, '');
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().suppliers;
    const { record, tiers } = this.line;
    return html`${[record, ...tiers].flatMap(({ conflicts }) => conflicts).map((conflict) => html`<asf-conflict .conflict=${conflict}></asf-conflict>`)}
      <asf-section .label=${say.sections.name}>${this.text('name', say.name)}${this.text('remark', say.remark)}
        <div class="sheet-picks">${stanceChoice(record)}<p class="second terms-hint">${words().stance.supplierHint}</p></div></asf-section>
      <asf-section .label=${say.sections.carriage}>${this.term('shipping')}${this.term('free_from')}${this.tiers()}</asf-section>
      <asf-section .label=${say.sections.least}>${this.term('minimum_order')}${this.term('minimum_charge')}</asf-section>
      <asf-section .label=${say.sections.wait}>${this.term('wait')}${this.term('wait_least')}${this.term('wait_most')}${this.sure()}${this.term('back_order')}</asf-section>
      <asf-section .label=${say.sections.returns}>${this.term('return_window')}${this.term('restocking')}${this.term('surcharge_deadline')}${this.term('warranty')}</asf-section>
      <asf-section .label=${say.sections.tax}>${this.term('tax_rate')}${this.term('duty_rate')}</asf-section>
      <div class="pair"><asf-button icon="history" word=${words().history.title} href="#/history/${record.id}"></asf-button>
        <asf-button icon="strike" word=${say.strike} @click=${() => { void strikeOut(record, say.struck(record.values.name ?? say.noName)); }}></asf-button></div>`;
  }

  private get currency(): string {
    return this.head.view?.settings.currency ?? 'GBP';
  }

  private text(field: 'name' | 'remark', label: string): TemplateResult {
    const { record } = this.line;
    const say = words().sheet.named;
    const save = (text: string, seen: RecordView = record): Promise<string | null> => {
      const value = text.trim();
      return value ? putDown(seen, field === 'name' ? { name: value } : { remark: value }, say.saved(label)) : putDown(seen, { clear: field }, say.cleared(label));
    };
    return html`<asf-edit-line .label=${label} .value=${record.values[field] ?? ''} .kind=${field === 'remark' ? 'area' : 'text'} .hint=${field === 'name' ? words().suppliers.nameHint : ''} key="supplier/${record.id}/${field}" .record=${record} .save=${save}></asf-edit-line>`;
  }

  private term(term: Term): TemplateResult {
    const { record } = this.line;
    const say = words().suppliers;
    const label = say.terms[term];
    const kind = TERMS[term];
    const save = (text: string, seen: RecordView = record): Promise<string | null> => {
      const change = readTerm(term, text, this.currency, record.values);
      if (typeof change === 'string') return Promise.resolve(change);
      return putDown(seen, change, 'clear' in change ? words().sheet.named.cleared(label) : words().sheet.named.saved(label));
    };
    return html`<asf-edit-line .label=${label} .value=${termText(term, record.values)} .shown=${termSaid(term, record.values)} .kind=${kind === 'money' ? 'money' : 'number'} .unit=${kind === 'money' ? '' : say.units[kind]}
      .currency=${this.currency} .hint=${say.hints[term] ?? ''} key="supplier/${record.id}/${term}" .record=${record} .save=${save}></asf-edit-line>`;
  }

  /** How sure the usual wait is. */
  private sure(): TemplateResult | typeof nothing {
    const { record } = this.line;
    const { wait, wait_certainty } = record.values;
    if (wait === undefined) return nothing;
    const label = words().suppliers.waitSure;
    return html`<asf-confidence class="terms-sure" .label=${label} .value=${wait_certainty ? confidenceOf(wait_certainty) : 'sure'}
      @asf-change=${(event: CustomEvent<{ value: Confidence }>) => { const sure: Certainty = certaintyOf(event.detail.value); void write(record, [{ wait_certainty: sure }], words().sheet.named.saved(words().suppliers.terms.wait)); }}></asf-confidence>`;
  }

  private tiers(): TemplateResult {
    const say = words().suppliers;
    const { record, tiers } = this.line;
    const units = this.head.view?.settings.units ?? 'metric';
    const open = this.tier === 'new' || tiers.some(({ id }) => id === this.tier);
    return html`${tiers.map((tier) => html`<asf-leader opens class="tier" .label=${tierSaid(tier, units)} .value=${tier.values.shipping ? money(tier.values.shipping) : words().sheet.named.empty} @click=${() => { this.open(tier.id); }}></asf-leader>`)}
      ${tiers.length ? html`<p class="reckoned terms-hint">${say.tierLead}</p>` : nothing}
      <asf-button compact icon="add" word=${tiers.length ? say.anotherTier : say.addTier} @click=${() => { this.open('new'); }}></asf-button>
      <asf-dialog .open=${open} .label=${say.tier.title} .body=${open ? html`<asf-tier-form supplier=${record.id} .tier=${tiers.find(({ id }) => id === this.tier)} .currency=${this.currency} .units=${units} @asf-put=${() => { this.open(''); }}></asf-tier-form>` : nothing} @asf-close=${() => { this.open(''); }}></asf-dialog>`;
  }

  private open(tier: string): void {
    this.tier = tier;
    noteOpen(OPEN, tier && `${this.line.record.id}/${tier}`);
  }
}

/** "from £100", "from 10 kg". */
function tierSaid({ values }: RecordView, units: 'metric' | 'inch'): string {
  const say = words().suppliers.tier;
  const from = [values.from_value ? money(values.from_value) : '', values.from_mass === undefined ? '' : `${massText(values.from_mass, units)}${KEEP}${massUnit(units)}`].filter(Boolean);
  return from.length ? say.from(from) : say.always;
}

declare global { interface HTMLElementTagNameMap { 'asf-supplier': Supplier } }
