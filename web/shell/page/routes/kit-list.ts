import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, newId } from '../../bridge/desk';
import type { Command, ContentsLine, ContentsRow, PartLine, Reckoned } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import '../parts/pick';
import { tagFigures } from '../parts/tag-figures';
import { say as aloud } from '../say';
import { words } from '../words';
import { readLines } from './kit-lines';

/** A row as it stands to be confirmed: the part that it is for, and whether it is. */
interface Row { of: ContentsRow; part: string; isIn: boolean }

/** What a kit holds, from a pasted list: looked at line by line before any of it is put down. Tells `asf-put` then. */
@customElement('asf-kit-list')
export class KitList extends LightElement {
  @property() quote = '';
  @property({ attribute: false }) parts: readonly PartLine[] = [];
  @state() private text = '';
  @state() private lines: readonly ContentsLine[] = [];
  @state() private rows: readonly Row[] | null = null;
  @state() private failed = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.text = journal.typedBefore(this.key) ?? '';
  }

  override render(): TemplateResult {
    const say = words().costing.kit.list;
    return html`<p class="reckoned">${say.lead}</p><form class="quote-form kit-typed" @submit=${this.look}>
        <asf-field kind="area" .label=${say.field} .value=${this.text} placeholder=${say.example} @input=${this.typed}></asf-field>
        <asf-button kind="submit" icon="list" word=${say.read}></asf-button></form>
      <div role="status">${this.failed ? html`<p class="reckoned">${say.failed}</p>` : nothing}</div>
      ${this.rows ? this.found(this.rows) : nothing}`;
  }

  private get key(): string {
    return `kit/${this.quote}/list`;
  }

  private found(rows: readonly Row[]): TemplateResult {
    const say = words().costing.kit.list;
    const chosen = covers(rows).size;
    return html`<p class="kit-found"><b>${this.summary(rows)}</b></p><ul class="kit-rows">${rows.map((row, at) => this.row(row, at))}</ul>
      ${chosen > 0 ? html`<div class="form-put"><asf-primary small .verb=${say.put(chosen)} icon="check" @click=${() => { void this.put(); }}></asf-primary></div>` : nothing}`;
  }

  private summary(rows: readonly Row[]): string {
    const say = words().costing.kit.list;
    return this.lines.length ? say.found(new Set(rows.filter(({ of }) => of.part).map(({ of }) => of.line)).size, this.lines.length) : say.none;
  }

  private row({ of, part, isIn }: Row, at: number): TemplateResult {
    const say = words().costing.kit.list;
    const line = this.lines[of.line];
    const typed = [line?.name, line?.number].filter(Boolean).join(', ');
    const how = of.covered && part === of.part ? say.already : part !== of.part ? '' : of.by === 'number' ? say.number : of.by === 'name' ? say.name : say.not;
    const told = [part ? this.named(part) : '', words().costing.kit.pieces(of.pieces, of.pieces), how, of.part && part === of.part && !of.sure && !of.covered ? say.likely : ''].filter(Boolean).join(' · ');
    const first = [of.part, ...of.others].filter((id) => id !== undefined);
    const rest = this.parts.map(({ id }) => id).filter((id) => !first.includes(id));
    const options = [['', say.choose] as const, ...[...first, ...rest].map((id) => [id, this.named(id)] as const)];
    return html`<li class="kit-row"><label class="kit-in"><input type="checkbox" .checked=${isIn} ?disabled=${!part} @change=${(event: Event) => { event.stopPropagation(); if (event.target instanceof HTMLInputElement) this.turn(at, { isIn: event.target.checked }); }}>
        <span><b>${typed}</b><br><span class="second">${told}</span></span></label>
      <asf-pick .label=${say.which(typed)} .value=${part} .options=${options} @asf-change=${(event: CustomEvent<{ value: string }>) => { event.stopPropagation(); this.turn(at, { part: event.detail.value, isIn: event.detail.value !== '' }); }}></asf-pick></li>`;
  }

  private named(id: string): string {
    const line = this.parts.find((one) => one.id === id);
    const side = line?.side ? words().sides[line.side] : '';
    return line ? [tagFigures(line.tag), line.name, side].filter(Boolean).join(' ') : words().costing.kit.unknown;
  }

  private turn(at: number, change: Partial<Row>): void {
    this.rows = this.rows?.map((row, i) => (i === at ? { ...row, ...change } : row)) ?? null;
  }

  private readonly typed = (event: Event): void => {
    this.text = textOf(event);
    this.rows = null;
    if (this.text) journal.typing(this.key, this.text);
    else journal.typed(this.key);
  };

  private readonly look = async (event: Event): Promise<void> => {
    event.preventDefault();
    this.lines = readLines(this.text);
    const view = await this.sought();
    if (!view) return;
    // What is likely alone is left to the person; what the kit covers is in it.
    this.rows = view.view === 'kit-contents' ? view.rows.map((of) => ({ of, part: of.part ?? '', isIn: of.sure && !of.covered })) : [];
    await this.updateComplete;
    this.querySelector('.kit-found')?.scrollIntoView({ block: 'nearest' });
    aloud(this.summary(this.rows));
  };

  /** Asked of the reckoning worker: it looks through all parts for each line. */
  private async sought(): Promise<Reckoned | null> {
    this.failed = false;
    try {
      return await desk.weigh({ ask: 'kit-contents', quote: this.quote, lines: [...this.lines] });
    } catch {
      this.failed = true;
      return null;
    }
  }

  private async put(): Promise<void> {
    const of = covers(this.rows ?? []);
    const commands = [...of].map(([part, quantity]): Command => ({ do: 'create', id: newId(), kind: 'cover', changes: [{ of: this.quote }, { part }, { quantity }] }));
    const { ok } = await carryOut({ do: 'all', commands }, words().costing.kit.list.done(of.size));
    if (!ok) return;
    journal.typed(this.key);
    this.tell('asf-put', null);
  }
}

/** What is put down: pieces by part; two lines for one part add up. */
function covers(rows: readonly Row[]): Map<string, number> {
  const of = new Map<string, number>();
  for (const { of: row, part } of rows.filter(({ isIn, part }) => isIn && part)) of.set(part, (of.get(part) ?? 0) + row.pieces);
  return of;
}

declare global { interface HTMLElementTagNameMap { 'asf-kit-list': KitList } }
