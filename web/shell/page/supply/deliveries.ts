import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Change, Compared, PartView, RecordView } from '../../bridge/protocol';
import '../kit/button';
import '../kit/dialog';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { dayWords } from '../refit/when';
import { write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import '../styles/supply.css';
import { today } from '../today';
import { words } from '../words';
import { dayOfYear } from '../words/format';
import './delivery-form';

type State = 'coming' | 'in' | 'right' | 'wrong';
const ICONS = { coming: 'timer', in: 'not-proved', right: 'proved', wrong: 'proved-bad' } as const satisfies Record<State, string>;
const BRINGS_NEW = new Set(['exchange', 'buy', 'kit', 'donor']);

/** New pieces of a part: ordered, in, compared with the old one; where its route brings any, or some were put down. */
@customElement('asf-deliveries')
export class Deliveries extends LightElement {
  @property({ attribute: false }) view?: PartView;
  /** The one that is changed; `new` for one more. */
  @state() private open: RecordView | 'new' | null = null;

  override render(): TemplateResult | typeof nothing {
    if (!this.view) return nothing;
    const say = words().supply;
    const { deliveries, line, record } = this.view;
    if (deliveries.length === 0 && !BRINGS_NEW.has(line.route ?? '')) return nothing;
    const right = deliveries.filter(({ values }) => values.compared === 'right').reduce((sum, { values }) => sum + (values.quantity ?? 1), 0);
    return html`<asf-section .label=${say.title} .count=${deliveries.length ? say.wanted(right, line.quantity) : say.none}>
      ${deliveries.length ? html`<p class="reckoned">${say.lead}</p>` : nothing}
      <ul class="deliveries">${deliveries.map((one) => html`<li class="delivery">${this.delivery(one)}</li>`)}</ul>
      <asf-button icon="add" word=${say.add} @click=${() => { this.open = 'new'; }}></asf-button>
      <asf-dialog .open=${this.open !== null} .label=${this.open === 'new' ? say.add : say.changeTitle} .body=${this.open ? html`<asf-delivery-form .partId=${record.id} .wanted=${line.quantity} .record=${this.open === 'new' ? undefined : this.open} @asf-put=${() => { this.open = null; }}></asf-delivery-form>` : nothing} @asf-close=${() => { this.open = null; }}></asf-dialog></asf-section>`;
  }

  private delivery(one: RecordView): TemplateResult {
    const say = words().supply;
    const { quantity = 1, from = '' } = one.values;
    const state = stateOf(one);
    return html`<p class="delivery-words"><asf-icon name=${ICONS[state]} size="20"></asf-icon><span><b>${say.pieces(quantity)}${from ? `, ${from}` : ''}</b><br><span class="second">${[say.states[state], ...this.days(one)].join(' · ')}</span></span></p>
      <div class="delivery-ways">${this.ways(one, state)}
        <asf-button compact plain word=${say.change} label="${say.change}: ${from || say.pieces(quantity)}" @click=${() => { this.open = one; }}></asf-button>
        <asf-button compact plain icon="strike" word=${say.strike} label="${say.strike}: ${from || say.pieces(quantity)}" @click=${() => { void strikeOut(one, say.struck); }}></asf-button></div>`;
  }

  private days({ values }: RecordView): string[] {
    const say = words().supply;
    const { arrived, due, taken } = values;
    const ordered = taken === undefined ? [] : [say.orderedOn(dayOfYear(new Date(taken)))];
    if (arrived) return [say.inOn(dayWords(arrived))];
    if (!due) return [say.noDay, ...ordered];
    return [due < today() ? say.overdue(dayWords(due)) : say.dueOn(dayWords(due)), ...ordered];
  }

  private ways(one: RecordView, state: State): TemplateResult {
    const say = words().supply;
    if (state === 'coming') return html`<asf-button icon="check" word=${say.in} label=${say.inOf(one.values.from ?? '')} @click=${() => { void this.put(one, [{ arrived: today() }], say.inDone); }}></asf-button>`;
    if (state !== 'in') return html`<asf-button compact plain word=${say.again} label=${say.againOf(one.values.from ?? '')} @click=${() => { void this.put(one, [{ clear: 'compared' }], say.againDone); }}></asf-button>`;
    const compared = (what: Compared, word: string, done: string, icon: 'check' | 'proved-bad'): TemplateResult => html`<asf-button icon=${icon} word=${word} label="${say.compare}: ${word}" @click=${() => { void this.put(one, [{ compared: what }], done); }}></asf-button>`;
    return html`<div class="pair" role="group" aria-label=${say.compare}>${compared('right', say.right, say.comparedRight, 'check')}${compared('wrong', say.wrong, say.comparedWrong, 'proved-bad')}</div>`;
  }

  private put(one: RecordView, changes: Change[], message: string): Promise<boolean> {
    return write(one, changes, message);
  }
}

function stateOf({ values }: RecordView): State {
  return values.compared ?? (values.arrived === undefined ? 'coming' : 'in');
}

declare global { interface HTMLElementTagNameMap { 'asf-deliveries': Deliveries } }
