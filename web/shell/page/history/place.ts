import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Change, HistoryLine } from '../../bridge/protocol';
import { takeBack } from '../carry-out';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Naming } from '../problems/naming';
import type { Address } from '../places';
import '../styles/history.css';
import { words } from '../words';
import { moment } from '../words/format';
import { changeSaid } from './change-said';

/** What was ever written to one record, latest first. */
@customElement('asf-place-history')
export class PlaceHistory extends LightElement {
  @property({ attribute: false }) address?: Address;
  private readonly live = new Live(this, 'history', () => (this.recordId ? { ask: 'history', id: this.recordId } : null));
  private readonly naming = new Naming(this);

  private get recordId(): string { return this.address?.id ?? ''; }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('address') && this.hasUpdated && this.live.view?.id !== this.recordId) this.live.anew();
  }

  override render(): TemplateResult {
    const say = words().history;
    const entries = byEntry(this.live.view?.lines ?? []);
    const thing = this.naming.of(this.recordId);
    const nothingThere = this.live.nothing || (this.live.view && entries.length === 0);
    return html`<asf-head .name=${say.title} .second=${[thing.name, this.live.view ? say.second(entries.length) : ''].filter(Boolean).join(', ')} back=${thing.address || '#/job'}></asf-head>
      <div class="body history-body">${nothingThere ? html`<asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="back" word=${say.gone.go} href="#/job"></asf-button></asf-empty>` : html`<p class="reckoned">${say.unchanged}</p>
        <ol class="history-lines">${entries.reverse().map((lines) => html`<li class="history-line">${this.entry(lines)}</li>`)}</ol>`}</div>`;
  }

  /** What one entry wrote, to the record and to what is said about it. */
  private entry(lines: readonly HistoryLine[]): TemplateResult | typeof nothing {
    const say = words().history;
    const [first] = lines;
    if (!first) return nothing;
    // The decision below says what was chosen.
    const isDecision = lines.some(({ kind, changes }) => kind === 'choice' && changes.some((change) => 'route' in change));
    const told = lines.map((line) => ({ line, changes: toldOf(line).filter((change) => !isDecision || !('chosen' in change || 'quote' in change)) })).filter(({ changes }) => changes.length > 0);
    const labels = told.flatMap(({ changes }) => changes.map((change) => changeSaid(change).label));
    return html`<p class="second">${moment(new Date(first.at))}</p>${told.map(({ line, changes }) => this.line(line, changes))}
      <asf-button compact plain icon="undo" word=${say.undo} label="${say.undo}: ${labels.join(', ')}" @click=${() => { void takeBack(first.entry, say.undone); }}></asf-button>`;
  }

  private line(line: HistoryLine, changes: readonly Change[]): TemplateResult {
    return html`${line.kind ? html`<p class="history-about">${words().problems.thing[line.kind]}</p>` : nothing}
      <dl>${changes.map((change) => { const { label, value } = this.said(change, line.changes); return html`<div class="leader-row"><dt>${label}</dt><span class="leader-dots" aria-hidden="true"></span><dd class="leader-value">${value}</dd></div>`; })}</dl>`;
  }

  private said(change: Change, beside: readonly Change[]): ReturnType<typeof changeSaid> {
    const said = changeSaid(change, beside);
    const [value] = Object.values(change);
    if (said.value !== words().history.other || typeof value !== 'string') return said;
    return { ...said, value: this.naming.of(value).name || said.value };
  }
}

/** Lines of one entry stand next to each other. */
function byEntry(lines: readonly HistoryLine[]): HistoryLine[][] {
  const entries: HistoryLine[][] = [];
  for (const line of lines) {
    const last = entries.at(-1);
    if (last?.[0]?.entry === line.entry) last.push(line);
    else entries.push([line]);
  }
  return entries;
}

/** What is worth reading of a line: not that a record began, nor whose it is where that is plain. */
function toldOf({ about, changes }: HistoryLine): Change[] {
  const begins = changes.some((change) => 'kind' in change);
  return changes.filter((change) => !('kind' in change) && !(begins && 'order' in change) && !('done' in change) && !(about && ('of' in change || 'part' in change || 'taken' in change)));
}

declare global { interface HTMLElementTagNameMap { 'asf-place-history': PlaceHistory } }
