import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { SupplierLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { KeepingWord } from '../frame/keeping-word';
import { go } from '../frame/start';
import * as journal from '../journal';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/icon';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import { noteOpen, openBefore } from '../reopening';
import '../styles/sheet.css';
import '../styles/stores.css';
import '../styles/terms.css';
import { words } from '../words';
import './supplier';
import { termSaid } from './terms';
import './terms-paste';

const PLACE = 'suppliers';
const KEY = 'supplier/new';

/** Suppliers and specialists; `#/suppliers/ID` is one of them with its terms. */
@customElement('asf-place-suppliers')
export class PlaceSuppliers extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private adding = openBefore(PLACE) !== '';
  @state() private name = journal.typedBefore(KEY) ?? '';
  @state() private wrong = '';
  private readonly live = new Live(this, 'suppliers', () => ({ ask: 'suppliers' }));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);

  private get here(): string { return this.address?.id ?? ''; }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('address') && this.hasUpdated) this.add(false);
  }

  override disconnectedCallback(): void {
    noteOpen(PLACE, '');
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().suppliers;
    const { view } = this.live;
    if (!view) return html`<asf-head .name=${say.title} back="#/job"></asf-head>`;
    const line = view.suppliers.find(({ record }) => record.id === this.here);
    if (this.here && !line) return html`<asf-head .name=${say.title} back="#/suppliers"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="supplier" word=${say.gone.go} href="#/suppliers"></asf-button></asf-empty></div>`;
    if (line) return html`<asf-head .name=${line.record.values.name ?? say.noName} .second=${say.quotes(line.quotes)} back="#/suppliers" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body"><asf-supplier .line=${line}></asf-supplier></div>`;
    return html`<asf-head .name=${say.title} .second=${view.suppliers.length ? say.second(view.suppliers.length) : ''} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body">
        ${view.suppliers.length === 0 ? html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>` : html`<ul>${view.suppliers.map((one) => html`<li>${row(one)}</li>`)}</ul>`}
        ${this.unnamed()}<asf-terms-paste .known=${view.suppliers} .currency=${this.head.view?.settings.currency ?? 'GBP'}></asf-terms-paste></div>
      <div class="foot"><asf-primary .verb=${say.add} icon="add" @click=${() => { this.add(true); }}></asf-primary></div>
      <asf-dialog .open=${this.adding} .label=${say.add} .body=${this.adding ? this.form() : nothing} @asf-close=${() => { this.add(false); }}></asf-dialog>`;
  }

  /** Names that stand in quotes: one tap makes each a supplier. */
  private unnamed(): TemplateResult | typeof nothing {
    const say = words().suppliers;
    const { unnamed = [] } = this.live.view ?? {};
    if (unnamed.length === 0) return nothing;
    return html`<asf-section .label=${say.unnamed} .count=${say.unnamedCount}><ul class="offered">${unnamed.map(({ name, quotes }) => html`<li>
      <button type="button" class="store-row offered-row" @click=${() => { void this.make(name); }}><asf-icon name="add"></asf-icon><span class="store-name"><span><span class="unseen">${say.addIt} </span>${name}</span></span><span class="store-count">${say.quotes(quotes)}</span></button></li>`)}</ul></asf-section>`;
  }

  private form(): TemplateResult {
    const say = words().suppliers;
    return html`<form class="place-form" @submit=${this.put}>
      <asf-field .label=${say.name} .hint=${say.nameHint} .value=${this.name} .error=${this.wrong} max="200" @input=${(event: Event) => { this.name = textOf(event); this.wrong = ''; journal.typing(KEY, this.name); }}></asf-field>
      <asf-primary small kind="submit" .verb=${say.put} icon="check"></asf-primary></form>`;
  }

  private add(adding: boolean): void {
    this.adding = adding;
    noteOpen(PLACE, adding ? 'new' : '');
    if (adding) void this.updateComplete.then(() => { this.querySelector<HTMLInputElement>('dialog input')?.focus(); });
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const name = this.name.trim();
    if (!name) {
      this.wrong = words().suppliers.needsName;
      return;
    }
    const id = await this.make(name);
    if (!id) return;
    journal.typed(KEY);
    this.name = '';
    this.add(false);
    go(`#/suppliers/${id}`);
  };

  private async make(name: string): Promise<string> {
    const id = newId();
    const { ok } = await carryOut({ do: 'create', id, kind: 'supplier', changes: [{ name }] }, words().suppliers.made(name));
    return ok ? id : '';
  }
}

function row({ record, quotes }: SupplierLine): TemplateResult {
  const say = words().suppliers;
  const { values } = record;
  const terms = [
    values.stance ? words().stance.options[values.stance] : '',
    values.shipping ? say.short.shipping(termSaid('shipping', values)) : '',
    values.free_from ? say.short.freeFrom(termSaid('free_from', values)) : '',
    values.wait === undefined ? '' : say.short.wait(termSaid('wait', values)),
  ].filter(Boolean).join(' · ');
  return html`<a class="store-row" href="#/suppliers/${record.id}"><span class="store-name">${values.name ?? say.noName}<span class="second">${terms || say.noTerms}</span></span>
    <span class="store-count">${say.quotes(quotes)}</span><asf-icon name="next" size="20"></asf-icon></a>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-suppliers': PlaceSuppliers } }
