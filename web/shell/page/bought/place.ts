import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PurchaseView, TotalsView } from '../../bridge/protocol';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/leader';
import '../kit/photo';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import { noteOpen, openBefore } from '../reopening';
import { strikeOut } from '../strike-out';
import '../styles/routes.css';
import '../styles/bought.css';
import { words } from '../words';
import { dayOfYear, money } from '../words/format';
import './form';

const PLACE = 'bought';

/** What was bought, latest first, with the photos of its receipts. */
@customElement('asf-place-bought')
export class PlaceBought extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private adding = false;
  private readonly totals = new Live(this, 'totals', () => ({ ask: 'totals' }));
  private readonly keeping = new KeepingWord(this);
  private readonly pictures = new Pictures(this);

  override connectedCallback(): void {
    super.connectedCallback();
    this.add((this.address?.search.has('new') ?? false) || openBefore(PLACE) !== '');
  }

  override disconnectedCallback(): void {
    noteOpen(PLACE, '');
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().bought;
    const { view } = this.totals;
    return html`<asf-head .name=${say.title} .second=${view ? say.second(view.purchases.length) : ''} back="#/plan" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body plan-body">${view ? this.list(view) : nothing}</div>
      <div class="foot"><asf-primary .verb=${say.add} icon="add" @click=${() => { this.add(true); }}></asf-primary></div>
      <asf-dialog .open=${this.adding} .label=${say.form.title} .body=${this.adding && view ? html`<asf-bought-form .currency=${view.spent.currency} @asf-put=${this.close}></asf-bought-form>` : nothing} @asf-close=${this.close}></asf-dialog>`;
  }

  private add(adding: boolean): void {
    this.adding = adding;
    noteOpen(PLACE, adding ? 'new' : '');
  }

  private readonly close = (): void => {
    this.add(false);
    // Coming back here must not ask for the same purchase again.
    if (this.address?.search.has('new')) location.replace('#/bought');
  };

  private list({ purchases, spent, spent_elsewhere }: TotalsView): TemplateResult {
    const say = words().bought;
    if (purchases.length === 0) return html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>`;
    return html`<ul>${purchases.map((purchase) => html`<li>${this.purchase(purchase)}</li>`)}</ul>
      <asf-leader result .label=${say.sum} .value=${money(spent)}></asf-leader>
      ${spent_elsewhere > 0 ? html`<p class="second">${say.elsewhere(spent_elsewhere)}</p>` : nothing}`;
  }

  private purchase({ record, photos, part_name }: PurchaseView): TemplateResult {
    const say = words().bought;
    const { name, cash, from, taken } = record.values;
    // Without a word of its own it is named by its part.
    const title = name || part_name || say.unnamed;
    const second = [name ? part_name : '', from, taken === undefined ? '' : dayOfYear(new Date(taken))].filter(Boolean).join(' · ');
    return html`<div class="bought"><div class="bought-words"><b>${title}</b><span class="second">${second}</span></div><b class="figure">${cash ? money(cash) : ''}</b>
      ${photos.map(({ record: photo }) => html`<a href="#/photo/${photo.id}" aria-label=${say.receiptOf(title)}><asf-photo .src=${photo.values.blob ? this.pictures.small(photo.values.blob) : ''} state="kept"></asf-photo></a>`)}
      <asf-button compact plain icon="strike" word=${say.strike} label="${say.strike}: ${title}" @click=${() => { void strikeOut(record, say.struck); }}></asf-button></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-bought': PlaceBought } }
