import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Command, Currency, SupplierLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/field';
import '../kit/primary';
import '../styles/routes.css';
import { LightElement } from '../kit/light-element';
import { seenOf } from '../sheet/write';
import { words } from '../words';
import { readTerms, type TermsRow } from './terms-table';

const KEY = 'suppliers/paste';

/** Terms out of a spreadsheet: pasted, looked at, put down for all with one stroke. */
@customElement('asf-terms-paste')
export class TermsPaste extends LightElement {
  @property({ attribute: false }) known: readonly SupplierLine[] = [];
  @property() currency: Currency = 'GBP';
  @state() private text = journal.typedBefore(KEY) ?? '';

  override render(): TemplateResult {
    const say = words().suppliers.paste;
    const { rows, unread, nameless } = readTerms(this.text, this.known, this.currency);
    const told = this.text.trim() !== '';
    const good = rows.filter(({ changes, known }) => changes.length > 0 || !known);
    return html`<details class="quote-fold" ?open=${told}><summary>${say.title}</summary><p class="second">${say.lead}</p>
      <asf-field kind="area" .label=${say.label} .value=${this.text} max="20000" @input=${(event: Event) => { this.type(textOf(event)); }}></asf-field>
      <div role="status">${told && nameless ? html`<p><b>${say.nameless}</b></p>` : nothing}${told && unread.length ? html`<p class="second">${say.unread(unread)}</p>` : nothing}
      ${rows.length ? html`<ul>${rows.map((row) => html`<li class="terms-row">${this.row(row)}</li>`)}</ul>` : nothing}</div>
      ${good.length ? html`<asf-primary small .verb=${say.put(good.length)} icon="check" @click=${() => { void this.put(good); }}></asf-primary>` : nothing}</details>`;
  }

  private row({ name, known, changes, wrong }: TermsRow): TemplateResult {
    const say = words().suppliers.paste;
    return html`<b>${name}</b> <span class="second">${known ? say.known : say.fresh}, ${say.terms(changes.length)}</span>
      ${wrong.map(({ column, why }) => html`<br><span class="second">${say.wrong(column, why)}</span>`)}`;
  }

  private type(text: string): void {
    this.text = text;
    journal.typing(KEY, text);
  }

  private async put(rows: readonly TermsRow[]): Promise<void> {
    const commands = rows.map(({ name, known, changes }): Command => (known ? { do: 'change', ids: [known.id], changes: [...changes], seen: seenOf(known, changes) } : { do: 'create', id: newId(), kind: 'supplier', changes: [{ name }, ...changes] }));
    const { ok } = await carryOut({ do: 'all', commands }, words().suppliers.paste.done(rows.length));
    if (!ok) return;
    journal.typed(KEY);
    this.text = '';
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-terms-paste': TermsPaste } }
