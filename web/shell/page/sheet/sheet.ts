import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { takeBack } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/message';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { standingWord } from '../parts/tag-figures';
import { sideBefore, tagInHand } from '../parts/tag-in-hand';
import { strikeOut } from '../strike-out';
import '../supply/deliveries';
import { words } from '../words';
import './conflict';
import './first-word';
import './joints';
import './judged';
import './marks';
import './named';
import './notes';
import './photos';
import './refit';
import './routes-link';
import './split';
import './where';
import '../styles/sheet.css';

/** All about one part. `beside`: it lies beside the list, so the way back to that is none. */
@customElement('asf-part-sheet')
export class PartSheet extends LightElement {
  @property() partId = '';
  @property({ type: Boolean }) beside = false;
  @property() back = '#/parts';

  private readonly live = new Live(this, 'part', () => (this.partId ? { ask: 'part', part: this.partId } : null));
  private readonly keeping = new KeepingWord(this);

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('partId') && this.hasUpdated) this.live.anew();
  }

  override render(): TemplateResult {
    const say = words().sheet;
    const { view } = this.live;
    if (this.live.nothing) return html`<asf-head .name=${say.part} back=${this.back}></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="parts" word=${say.gone.go} href="#/parts"></asf-button></asf-empty></div>`;
    if (!view || view.record.id !== this.partId) return html`<asf-head sheet .name=${say.part} back=${this.back}></asf-head>`;
    const { record, line } = view;
    return html`${this.head()}
      <asf-sheet-photos .view=${view}></asf-sheet-photos>
      <div class="body sheet-body">
        ${line.struck ? html`<asf-message .happened=${say.strike.is}><asf-button icon="bring" word=${say.strike.bring} @click=${() => { void this.strike(false); }}></asf-button></asf-message>` : nothing}
        ${record.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict} .seen=${record.seen}></asf-conflict>`)}
        <asf-sheet-routes .view=${view}></asf-sheet-routes>
        <asf-sheet-word .view=${view}></asf-sheet-word>
        <asf-sheet-judged .partId=${this.partId}></asf-sheet-judged>
        <asf-sheet-where .view=${view}></asf-sheet-where>
        <asf-deliveries .view=${view}></asf-deliveries>
        <asf-sheet-refit .view=${view}></asf-sheet-refit>
        <asf-sheet-notes .view=${view}></asf-sheet-notes>
        <asf-sheet-joints .view=${view}></asf-sheet-joints>
        <asf-sheet-named .view=${view}></asf-sheet-named>
        <asf-sheet-marks .view=${view}></asf-sheet-marks>
        <asf-sheet-split .view=${view}></asf-sheet-split>
        ${this.history()}
      </div>`;
  }

  private head(): TemplateResult {
    const { view } = this.live;
    if (!view) return html``;
    const { line } = view;
    return html`<asf-head sheet class=${this.beside ? '' : 'head-words-tight'} .name=${line.name || words().sheet.noName} .second=${html`${sideBefore(line)}${standingWord(line)}`} .tag=${tagInHand(line)}
      .cells=${this.beside ? [] : [this.keeping.cell]} back=${this.beside && this.back === '#/parts' ? nothing : this.back}></asf-head>`;
  }

  private history(): TemplateResult {
    const say = words().sheet;
    const { view } = this.live;
    const { latest } = view ?? {};
    return html`<asf-section .label=${say.history.title}>
      <div class="pair">
        <asf-button icon="history" word=${say.history.all} href=${`#/history/${this.partId}`}></asf-button>
        ${latest ? html`<asf-button icon="undo" word=${say.history.undo} @click=${() => { void takeBack(latest, say.history.undone); }}></asf-button>` : nothing}
        ${view?.line.struck ? nothing : html`<asf-button icon="strike" word=${say.strike.go} @click=${() => { void this.strike(true); }}></asf-button>`}
      </div></asf-section>`;
  }

  private async strike(struck: boolean): Promise<void> {
    const say = words().sheet.strike;
    const record = this.live.view?.record;
    if (record) await strikeOut(record, struck ? say.done : say.brought, struck);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-part-sheet': PartSheet } }
