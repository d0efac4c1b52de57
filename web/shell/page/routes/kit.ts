import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { CoverView, CostView, KitView, PartLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/dialog';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import { strikeOut } from '../strike-out';
import { tagFigures } from '../parts/tag-figures';
import { noteOpen, openBefore } from '../reopening';
import { words } from '../words';
import { money } from '../words/format';
import './kit-list';

const PASTE = 'routes/kit-list';

/** What a kit covers, and what it is worth beside its pieces bought singly. Tells `asf-choose-all` with the parts still to be chosen for. */
@customElement('asf-kit')
export class Kit extends LightElement {
  @property({ attribute: false }) view!: CostView;
  @property({ attribute: false }) kit!: KitView;
  private readonly parts = new Live(this, 'parts', () => ({ ask: 'parts', group: 'none' }));

  @state() private pasting = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.pasting = openBefore(PASTE) !== '' && openBefore(PASTE) === this.kit.quote;
  }

  override disconnectedCallback(): void {
    noteOpen(PASTE, '');
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().costing.kit;
    const { covers, price, singly, with_kit } = this.kit;
    const open = covers.filter(({ spare }) => !spare);
    // What is decided and not for something else is decided for this kit.
    const waiting = open.filter(({ part }) => !this.line(part)?.route);
    return html`<asf-section .label=${say.title} .count=${say.count(covers.length)}>
      ${covers.map((cover) => this.cover(cover))}
      <p class="reckoned">${singly.minor === 0 ? say.noSingles : with_kit.minor < singly.minor ? say.pays(money(with_kit), money(singly)) : say.paysNot(money(with_kit), money(singly))}</p>
      <asf-pick .label=${say.add} value="" .options=${[['', say.choose], ...this.others().map((line) => [line.id, partWords(line)] as const)]} @asf-change=${(event: CustomEvent<{ value: string }>) => { if (event.detail.value) void this.add(event.detail.value); }}></asf-pick>
      <div class="kit-paste"><asf-button icon="list" word=${say.list.open} @click=${() => { this.paste(true); }}></asf-button></div>
      <asf-dialog .open=${this.pasting} .label=${say.list.title} .body=${this.pasting ? html`<asf-kit-list quote=${this.kit.quote} .parts=${this.parts.view?.rows ?? []} @asf-put=${() => { this.paste(false); }}></asf-kit-list>` : nothing} @asf-close=${() => { this.paste(false); }}></asf-dialog>
      ${open.length > 1 && waiting.length > 0 ? html`<asf-button class="kit-all" icon="check" word=${waiting.length < open.length ? say.chooseRest(waiting.length) : say.chooseAll(open.length, money(price))} @click=${() => { this.tell('asf-choose-all', { parts: waiting.map(({ part }) => part) }); }}></asf-button>` : nothing}</asf-section>`;
  }

  private paste(open: boolean): void {
    this.pasting = open;
    noteOpen(PASTE, open ? this.kit.quote : '');
  }

  private cover(cover: CoverView): TemplateResult {
    const say = words().costing.kit;
    const line = this.line(cover.part);
    const name = line ? partWords(line) : say.unknown;
    const told = [cover.spare ? say.spare : '', say.pieces(cover.pieces, cover.needed), cover.singly ? say.singly(money(cover.singly)) : say.noSingle].filter(Boolean).join(', ');
    // The part that the kit is quoted on is in it without a record that says so.
    const isOwn = cover.cover === this.kit.quote;
    return html`<div class="kit-cover"><a href="#/routes/${cover.part}"><b>${name}</b></a><span class="second">${told}</span>
      ${isOwn ? nothing : html`<asf-button compact plain word=${say.takeOut} label="${say.takeOut}: ${name}" @click=${() => { void strikeOut({ id: cover.cover, seen: cover.seen }, say.takenOut(name)); }}></asf-button>`}</div>`;
  }

  private line(part: string): PartLine | undefined {
    return this.parts.view?.rows.find(({ id }) => id === part);
  }

  private others(): PartLine[] {
    const within = new Set(this.kit.covers.map(({ part }) => part));
    return (this.parts.view?.rows ?? []).filter(({ id }) => !within.has(id));
  }

  private async add(part: string): Promise<void> {
    const line = this.line(part);
    await carryOut({ do: 'create', id: newId(), kind: 'cover', changes: [{ of: this.kit.quote }, { part }, { quantity: line?.quantity ?? 1 }] }, words().costing.kit.added(line ? partWords(line) : ''));
  }
}

function partWords({ tag, name }: PartLine): string {
  return [tagFigures(tag), name].filter(Boolean).join(' ');
}

declare global { interface HTMLElementTagNameMap { 'asf-kit': Kit } }
