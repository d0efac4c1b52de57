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
    const lines = this.live.view?.lines ?? [];
    const thing = this.naming.of(this.recordId);
    const nothingThere = this.live.nothing || (this.live.view && lines.length === 0);
    return html`<asf-head .name=${say.title} .second=${[thing.name, this.live.view ? say.second(lines.length) : ''].filter(Boolean).join(', ')} back=${thing.address || '#/job'}></asf-head>
      <div class="body history-body">${nothingThere ? html`<asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="back" word=${say.gone.go} href="#/job"></asf-button></asf-empty>` : html`<p class="reckoned">${say.unchanged}</p>
        <ol class="history-lines">${[...lines].reverse().map((line) => html`<li class="history-line">${this.line(line)}</li>`)}</ol>`}</div>`;
  }

  private line({ entry, at, changes }: HistoryLine): TemplateResult {
    const say = words().history;
    const told = changes.filter((change) => !('kind' in change) && !('done' in change));
    return html`<p class="second">${moment(new Date(at))}</p>
      <dl>${told.map((change) => { const { label, value } = this.said(change); return html`<div class="leader-row"><dt>${label}</dt><span class="leader-dots" aria-hidden="true"></span><dd class="leader-value">${value}</dd></div>`; })}</dl>
      <asf-button compact plain icon="undo" word=${say.undo} label="${say.undo}: ${told.map((change) => changeSaid(change).label).join(', ')}" @click=${() => { void takeBack(entry, say.undone); }}></asf-button>${nothing}`;
  }

  private said(change: Change): ReturnType<typeof changeSaid> {
    const said = changeSaid(change);
    const [value] = Object.values(change);
    if (said.value !== words().history.other || typeof value !== 'string') return said;
    return { ...said, value: this.naming.of(value).name || said.value };
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-history': PlaceHistory } }
