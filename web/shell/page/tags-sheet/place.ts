import { html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { textOf } from '../field-text';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/head';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import '../styles/tags-sheet.css';
import { tagNumber } from '../teardown/tag-number';
import { words } from '../words';
import { drawnSheet } from './drawn-sheet';
import { SHEETS, layOut, type Sheet } from './labels';
import { clearPaper, setPaper } from './paper';

const MOST_SHEETS = 10;

/** Plain numbered tags, printed to fit labels. */
@customElement('asf-place-tags-sheet')
export class TagsSheetPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private paper: Sheet['name'] = navigator.language === 'en-US' || navigator.language === 'en-CA' ? 'letter' : 'a4';
  @state() private sheets = 1;
  @state() private skip = 0;
  @state() private typed: string | null = null;

  private readonly live = new Live(this, 'teardown', () => ({ ask: 'teardown' }));

  override disconnectedCallback(): void {
    clearPaper();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const text = words().tagsSheet;
    const sheet = SHEETS[this.paper];
    const pages = layOut(sheet, this.from, this.sheets, this.skip);
    const last = pages[pages.length - 1] ?? [];
    setPaper(sheet);
    return html`<asf-head .name=${text.title} .second=${text.second(tagNumber(this.from), tagNumber(last[last.length - 1]?.number))} back="#/job"></asf-head>
      <div class="body ts-body">
        <p class="reckoned">${text.why}</p>
        <asf-choice .label=${text.paper} columns="2" .value=${this.paper} .options=${(['a4', 'letter'] as const).map((value) => ({ value, word: text.papers[value], second: text.paperSecond[value] }))}
          @asf-change=${(event: CustomEvent<{ value: Sheet['name'] }>) => { this.paper = event.detail.value; }}></asf-choice>
        <div role="group" aria-label=${text.pages}><p class="choice-label">${text.pages}</p><div class="ts-step">
          <asf-button word="−" label=${text.fewer} ?disabled=${this.sheets <= 1} @click=${() => { this.sheets = Math.max(1, this.sheets - 1); }}></asf-button>
          <output class="figure">${this.sheets}</output>
          <asf-button word="+" label=${text.another} ?disabled=${this.sheets >= MOST_SHEETS} @click=${() => { this.sheets = Math.min(MOST_SHEETS, this.sheets + 1); }}></asf-button></div></div>
        <div class="pair">
          <asf-field kind="number" label=${text.from} error=${this.isWrong ? text.fromWrong : ''} .value=${this.typed ?? String(this.from)} @input=${(event: Event) => { this.typed = textOf(event); }}></asf-field>
          <asf-field kind="number" label=${text.skip} .value=${String(this.skip)} @input=${(event: Event) => { this.skip = Math.max(0, Math.min(sheet.across * sheet.down - 1, Math.floor(Number(textOf(event)) || 0))); }}></asf-field>
        </div>
      </div>
      <div class="foot ts-foot"><asf-primary verb=${text.print} icon="printer" cost=${text.sheets(this.sheets)} ?disabled=${this.isWrong} @click=${() => { print(); }}></asf-primary></div>
      <section class="ts-sheets" aria-label=${text.preview}>${pages.map((labels) => drawnSheet(sheet, labels))}</section>`;
  }

  private get isWrong(): boolean {
    return this.typed !== null && !/^[1-9]\d{0,6}$/.test(this.typed.trim());
  }

  private get from(): number {
    const typed = Number(this.typed);
    return this.typed !== null && !this.isWrong ? typed : this.live.view?.next_tag ?? 1;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-tags-sheet': TagsSheetPlace } }
