import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, newId } from '../../bridge/desk';
import type { PartLine, QuoteCost } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import { changeSaid } from '../history/change-said';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/head';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../parts/pick';
import type { Address } from '../places';
import { routeWord } from '../routes/route-word';
import { say as aloud } from '../say';
import '../styles/bought.css';
import '../styles/paste.css';
import '../styles/routes.css';
import { words } from '../words';
import { commandOf, partSaid, partsNamed, planOf, type Known, type Row } from './plan';
import { COLUMNS, readTable, type Column, type DecimalSign, type Table } from './table';

const KEY = 'paste/rows';

/** Rows of a spreadsheet as quotes: pasted, looked at, put down, taken back with one undo. */
@customElement('asf-place-paste')
export class PlacePaste extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private text = journal.typedBefore(KEY) ?? '';
  @state() private table: Table | null = null;
  @state() private known: Known | null = null;
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().paste;
    return html`<asf-head .name=${say.title} .second=${say.second} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body paste-body"><p class="reckoned">${say.lead}</p>
        <form class="quote-form" @submit=${this.look}>
          <asf-field kind="area" .label=${say.field} .value=${this.text} placeholder=${say.example} @input=${this.typed}></asf-field>
          <asf-button kind="submit" icon="list" word=${say.read}></asf-button></form>
        ${this.table && this.known ? this.preview(this.table, this.known) : nothing}</div>`;
  }

  private preview(table: Table, known: Known): TemplateResult {
    const say = words().paste;
    const rows = planOf(table, known);
    const good = rows.filter(({ problem }) => !problem);
    return html`${this.mapping(table)}
      <asf-section class="paste-found" .label=${say.preview} .count=${this.summary()}>
        ${rows.length === 0 ? html`<p class="second">${say.none}</p>` : nothing}
        <ul class="paste-rows">${rows.map((row) => this.row(row))}</ul></asf-section>
      ${good.length > 0 ? html`<asf-primary .verb=${say.put} icon="check" @click=${() => { void this.put(rows, table); }}></asf-primary>` : nothing}`;
  }

  /** How much would change, in one line. */
  private summary(): string {
    const rows = this.table && this.known ? planOf(this.table, this.known) : [];
    const good = rows.filter(({ problem }) => !problem);
    const fresh = new Set(good.filter(({ part }) => !part).map(({ name }) => name.toLowerCase())).size;
    return words().paste.summary(good.filter(({ quote }) => !quote).length, good.filter(({ quote }) => quote).length, fresh, rows.length - good.length);
  }

  private mapping(table: Table): TemplateResult {
    const say = words().paste;
    const heads = table.header ? table.rows[0] ?? [] : [];
    return html`<asf-choice columns="2" .label=${say.header} .options=${[{ value: 'yes', word: say.headerYes }, { value: 'no', word: say.headerNo }]} .value=${table.header ? 'yes' : 'no'} @asf-change=${(event: CustomEvent<{ value: string }>) => { void this.read({ ...table, header: event.detail.value === 'yes' }); }}></asf-choice>
      <asf-choice columns="2" .label=${say.decimal} .options=${[{ value: '.', word: say.point }, { value: ',', word: say.comma }]} .value=${table.decimal} @asf-change=${(event: CustomEvent<{ value: DecimalSign }>) => { this.table = { ...table, decimal: event.detail.value }; }}></asf-choice>
      <asf-section .label=${say.columns}><div class="paste-columns">${table.columns.map((column, at) => html`<asf-pick .label=${say.columnOf(at + 1, heads[at] ?? '')} .value=${column}
        .options=${[['', say.leave], ...COLUMNS.map((one) => [one, say.column[one]] as const)]} @asf-change=${(event: CustomEvent<{ value: Column | '' }>) => { void this.read({ ...table, columns: table.columns.map((one, i) => (i === at ? event.detail.value : one === event.detail.value ? '' : one)) }); }}></asf-pick>`)}</div></asf-section>`;
  }

  private row(row: Row): TemplateResult {
    const say = words().paste;
    const said = row.changes.map((change) => { const { label, value } = changeSaid(change); return `${label} ${value}`; }).join(', ');
    const what = row.problem ? `${say.leftOut}: ${row.problem}` : `${row.route ? routeWord(row.route) : ''} · ${row.quote ? say.changes(said) : `${say.isNew}: ${said}`}`;
    return html`<li class="paste-row ${row.problem ? 'paste-out' : ''}"><span class="second">${say.row(row.number)}</span><b>${partSaid(row) || '–'}</b>${!row.problem && !row.part ? html`<span class="second paste-new">${say.newPart}</span>` : nothing}<span>${what}</span></li>`;
  }

  private readonly typed = (event: Event): void => {
    if (!(event.target instanceof HTMLTextAreaElement)) return;
    this.text = event.target.value;
    this.table = null;
    if (this.text) journal.typing(KEY, this.text);
    else journal.typed(KEY);
  };

  private readonly look = async (event: Event): Promise<void> => {
    event.preventDefault();
    await this.read(readTable(this.text));
    await this.updateComplete;
    // What was found lies below the fold on a phone, and out of hearing everywhere.
    this.querySelector('.paste-found')?.scrollIntoView({ block: 'nearest' });
    aloud(this.summary());
  };

  /** Looks up what the table is about; another mapping of its columns may name other parts. */
  private async read(table: Table): Promise<void> {
    this.known = await known(table);
    this.table = table;
  }

  private async put(rows: readonly Row[], table: Table): Promise<void> {
    const at = table.columns.indexOf('from');
    const from = ({ number }: Row): string => table.rows[number - 1]?.[at] ?? '';
    const count = rows.filter(({ problem }) => !problem).length;
    const { ok } = await carryOut(commandOf(rows, from, newId), words().paste.done(count));
    if (!ok) return;
    journal.typed(KEY);
    [this.text, this.table] = ['', null];
  }
}

/** The parts of the job, and the quotes on those that the table names. */
async function known(table: Table): Promise<Known> {
  const [head, list] = [await desk.ask({ ask: 'head' }), await desk.ask({ ask: 'parts', group: 'none' })];
  const parts: readonly PartLine[] = list.view === 'parts' ? list.rows : [];
  const quotes = new Map<string, readonly QuoteCost[]>();
  for (const { id } of partsNamed(table, parts)) {
    const cost = await desk.ask({ ask: 'cost', part: id });
    if (cost.view === 'cost') quotes.set(id, cost.quotes);
  }
  return { parts, quotes: (part) => quotes.get(part) ?? [], currency: head.view === 'head' ? head.settings.currency : 'GBP' };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-paste': PlacePaste } }
