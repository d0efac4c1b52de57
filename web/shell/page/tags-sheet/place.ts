import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { Problem, TagLabels, TagSheetView, TagsPaper } from '../../bridge/protocol';
import { textOf } from '../field-text';
import { failure } from '../hand-over/list-out';
import { paperWords } from '../hand-over/paper-words';
import '../hand-over/prepared';
import '../hand-over/preparing';
import '../kit/button';
import '../kit/choice';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import { LightElement } from '../kit/light-element';
import '../kit/message';
import '../kit/primary';
import { Live } from '../live';
import '../parts/pick';
import type { Address } from '../places';
import '../styles/hand-over.css';
import '../styles/tags-sheet.css';
import { words } from '../words';
import { drawnSheet, readable } from './drawn-sheet';
import './own-sheet';
import { keepPaper, nudgeFigure, paperKept, sheetOf, type CardKind, type OwnField, type Paper, type PaperKind } from './paper';
import { problemOf } from './problem-of';

const MOST_SHEETS = 10;
/** How long nothing is typed before the sheet is drawn anew, in milliseconds. */
const AFTER = 250;

type Of = TagLabels['of'];

/** Labels and strips for parts and places: chosen, looked at, then handed out as a PDF. */
@customElement('asf-place-tags-sheet')
export class TagsSheetPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private paper: Paper = paperKept();
  @state() private of: Of = 'blank';
  /** The one place that the address names, until something else is chosen. */
  @state() private only = '';
  @state() private forPlaces = false;
  @state() private assembly = '';
  @state() private sheets = 1;
  @state() private skip = '0';
  @state() private from: string | null = null;
  @state() private view: TagSheetView | undefined;
  @state() private problem: Problem | null = null;
  @state() private busy = false;
  @state() private file: File | undefined;
  @state() private failed = '';
  private timer = 0;
  private asked = 0;

  private readonly live = new Live(this, 'teardown', () => ({ ask: 'teardown' }));
  private readonly assemblies = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private drawn = '';

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('address')) return;
    this.only = this.address.search.get('place') ?? '';
    if (this.only) this.of = 'places';
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  override updated(): void {
    const question = JSON.stringify(this.question());
    if (question === this.drawn || question === 'null') return;
    // The first is drawn at once.
    const after = this.drawn === '' ? 0 : AFTER;
    this.drawn = question;
    this.file = undefined;
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => { void this.look(); }, after);
  }

  override render(): TemplateResult {
    const text = words().tagsSheet;
    const { view } = this;
    const [first, last] = [view?.labels[0], view?.labels[view.labels.length - 1]];
    // Only numbers run on from the first to the last.
    const what = this.of === 'blank' && first && last ? text.range(readable(first.code), readable(last.code)) : text.labels(view?.all ?? 0);
    const second = view ? text.second(what, view.sheets) : '';
    return html`<asf-head .name=${text.title} .second=${second} back=${this.back}></asf-head>
      <div class="ts-columns"><div><div class="body ts-body">
        <p class="reckoned">${text.why}</p>
        ${this.papers()}
        ${this.what()}
        <div class="ts-figures-in">
          <asf-field kind="number" .label=${text.skip} .value=${this.skip} .error=${this.used === null ? text.skipWrong(this.aSheet - 1) : ''} @input=${(event: Event) => { this.skip = textOf(event); }}></asf-field>
        </div>
        <fieldset class="ts-own"><legend class="choice-label">${text.nudge}</legend><div class="ts-figures-in">${(['right', 'down'] as const).map((way) => html`<asf-field class="ts-nudge" unit="mm"
          .label=${text[way]} .value=${this.paper[way]} .error=${nudgeFigure(this.paper[way]) === null ? text.nudgeWrong : ''} @input=${(event: Event) => { this.change({ [way]: textOf(event) }); }}></asf-field>`)}</div>
          <p class="second">${text.nudgeHint}</p></fieldset>
      </div>
      <div class="foot ts-foot">${this.out()}</div></div>
      ${view && !this.problem ? html`<section class="ts-sheets" aria-label=${text.preview}><h2 class="choice-label">${text.preview}</h2>${drawnSheet(view)}</section>` : nothing}</div>`;
  }

  /** Where it was come from. */
  private get back(): string {
    const { search } = this.address;
    const [place, from] = [search.get('place'), search.get('from')];
    if (place) return `#/stores/${place}`;
    return from === 'stores' || from === 'teardown' ? `#/${from}` : '#/job';
  }

  private papers(): TemplateResult {
    const text = words().tagsSheet;
    const { kind, card, own } = this.paper;
    return html`<asf-choice .label=${text.paper} columns="2" .value=${kind} .options=${(['a4', 'letter', 'strips', 'own'] as const).map((value) => ({ value, word: text.papers[value], second: text.paperSecond[value] }))}
        @asf-change=${(event: CustomEvent<{ value: PaperKind }>) => { this.change({ kind: event.detail.value }); }}></asf-choice>
      ${kind === 'strips' ? html`<asf-choice .label=${text.card} columns="2" .value=${card} .options=${(['strips-a4', 'strips-letter'] as const).map((value) => ({ value, word: text.cards[value], second: text.cardSecond[value] }))}
        @asf-change=${(event: CustomEvent<{ value: CardKind }>) => { this.change({ card: event.detail.value }); }}></asf-choice>` : nothing}
      ${kind === 'own' ? html`<asf-own-sheet .own=${own} @asf-own=${(event: CustomEvent<{ field: OwnField; text: string }>) => { this.change({ own: { ...own, [event.detail.field]: event.detail.text } }); }}></asf-own-sheet>` : nothing}`;
  }

  private what(): TemplateResult {
    const text = words().tagsSheet;
    return html`<asf-choice .label=${text.what} columns="3" .value=${this.of} .options=${(['blank', 'parts', 'places'] as const).map((value) => ({ value, word: text.of[value], second: text.ofSecond[value] }))}
        @asf-change=${(event: CustomEvent<{ value: Of }>) => { [this.of, this.only] = [event.detail.value, '']; }}></asf-choice>
      ${this.of === 'blank' ? this.numbers() : nothing}
      ${this.of === 'parts' ? html`<asf-pick .label=${text.assembly} .options=${[['', text.allParts] as const, ...this.assemblyOptions()]} .value=${this.assembly} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.assembly = event.detail.value; }}></asf-pick>` : nothing}`;
  }

  private numbers(): TemplateResult {
    const text = words().tagsSheet;
    return html`<asf-choice compact .label=${text.for} columns="2" .value=${this.forPlaces ? 'places' : 'parts'} .options=${[{ value: 'parts', word: text.forParts }, { value: 'places', word: text.forPlaces }]}
        @asf-change=${(event: CustomEvent<{ value: string }>) => { this.forPlaces = event.detail.value === 'places'; }}></asf-choice>
      <asf-field kind="number" .label=${text.from} .hint=${this.from === null ? text.fromNext : ''} .error=${this.first === null ? text.fromWrong : ''} .value=${this.from ?? String(this.live.view?.next_tag ?? 1)} @input=${(event: Event) => { this.from = textOf(event); }}></asf-field>
      <div role="group" aria-label=${text.pages}><p class="choice-label">${text.pages}</p><div class="ts-step">
        <asf-button word="−" label=${text.fewer} ?disabled=${this.sheets <= 1} @click=${() => { this.sheets = Math.max(1, this.sheets - 1); }}></asf-button>
        <output class="figure">${this.sheets}</output>
        <asf-button word="+" label=${text.another} ?disabled=${this.sheets >= MOST_SHEETS} @click=${() => { this.sheets = Math.min(MOST_SHEETS, this.sheets + 1); }}></asf-button></div></div>`;
  }

  /** What stands in the way, the file, or the button that makes it. */
  private out(): TemplateResult {
    const text = words().tagsSheet;
    const { problem, view } = this;
    if (problem?.code === 'missing') return html`<asf-empty .first=${text.nothing.first} .then=${text.nothing.then}></asf-empty>`;
    if (problem) return html`<asf-message kind="alert" .happened=${words().problems.happened(problem)} .todo=${words().problems.todo(problem)}></asf-message>`;
    if (this.busy) return html`<asf-preparing .what=${text.making}></asf-preparing>`;
    if (this.file) return html`<asf-prepared .file=${this.file} @asf-again=${this.make}></asf-prepared>`;
    return html`${view && view.untagged > 0 ? html`<p class="second">${text.untagged(view.untagged)}</p>` : nothing}
      ${view && view.unprinted > 0 ? html`<p class="second">${text.unprinted(view.unprinted)}</p>` : nothing}
      <asf-primary .verb=${text.make} icon="printer" .cost=${view ? text.labels(view.all) : ''} ?disabled=${!view || this.question() === null} @click=${this.make}></asf-primary>
      ${this.failed ? failure(this.failed) : nothing}`;
  }

  private assemblyOptions(): (readonly [string, string])[] {
    return (this.assemblies.view?.assemblies ?? []).map(({ record, side, depth }) => [record.id, `${'\u2003'.repeat(depth)}${record.values.name ?? words().parts.noName}${side ? ` ${words().sides[side]}` : ''}`]);
  }

  private change(change: Partial<Paper>): void {
    this.paper = { ...this.paper, ...change };
    keepPaper(this.paper);
  }

  /** How many labels are on a sheet, as far as that is known. */
  private get aSheet(): number {
    const sheet = sheetOf(this.paper);
    if (sheet?.kind === 'own') return Math.max(1, sheet.across * sheet.down);
    const counts = { a4: 21, letter: 30, 'strips-a4': 18, 'strips-letter': 15 };
    return sheet ? counts[sheet.kind] : 1;
  }

  private get used(): number | null {
    return /^\d{1,4}$/.test(this.skip.trim()) && Number(this.skip) < this.aSheet ? Number(this.skip) : null;
  }

  private get first(): number | null {
    if (this.from === null) return this.live.view?.next_tag ?? 1;
    return /^[1-9]\d{0,6}$/.test(this.from.trim()) ? Number(this.from) : null;
  }

  private question(): TagsPaper | null {
    const [sheet, right, down, { used, first }] = [sheetOf(this.paper), nudgeFigure(this.paper.right), nudgeFigure(this.paper.down), this];
    if (sheet === null || right === null || down === null || used === null || (this.of === 'blank' && (first === null || !this.live.view))) return null;
    return { sheet, labels: this.labels(first ?? 1, this.sheets * this.aSheet - used), skip: used, nudge: { right, down } };
  }

  private labels(from: number, count: number): TagLabels {
    if (this.of === 'blank') return { of: 'blank', from, count, places: this.forPlaces };
    if (this.of === 'places') return { of: 'places', ...(this.only && { ids: [this.only] }) };
    return { of: 'parts', ...(this.assembly && { assembly: this.assembly }) };
  }

  private async look(): Promise<void> {
    const paper = this.question();
    if (!paper) return;
    const turn = ++this.asked;
    try {
      const view = await desk.lookAtTags(paper, paperWords());
      if (turn === this.asked) [this.view, this.problem, this.failed] = [view, null, ''];
    } catch (error) {
      if (turn !== this.asked) return;
      this.problem = problemOf(error);
      this.failed = this.problem ? '' : String(error);
    }
  }

  private readonly make = async (): Promise<void> => {
    const paper = this.question();
    if (!paper) return;
    const asked = JSON.stringify(paper);
    [this.busy, this.file, this.failed] = [true, undefined, ''];
    try {
      const file = await desk.prepareTags(paper, paperWords());
      // Changed meanwhile, it is not what is drawn beside it.
      if (asked === this.drawn) this.file = file;
    } catch (error) {
      if (asked !== this.drawn) return;
      this.problem = problemOf(error);
      this.failed = this.problem ? '' : String(error);
    } finally {
      this.busy = false;
    }
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-tags-sheet': TagsSheetPlace } }
