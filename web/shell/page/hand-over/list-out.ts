import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { PartsQuery } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/message';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/filters';
import type { FilterChange, Narrowing } from '../parts/filters';
import { today } from '../today';
import { words } from '../words';
import { paperWords } from './paper-words';
import './prepared';
import './preparing';

type List = 'parts' | 'to-buy' | 'to-send';
type Form = 'html' | 'csv';

/** The parts list, what is to be bought or to be sent out, as a page or a table: which parts, prepare, then share or save. */
@customElement('asf-list-out')
export class ListOut extends LightElement {
  @state() private list: List = 'parts';
  @state() private form: Form = 'html';
  @state() private narrowing: Narrowing = { struck: false };
  @state() private busy = false;
  @state() private file: File | undefined;
  @state() private failed = '';
  private readonly live = new Live(this, 'parts', () => ({ ask: 'parts', ...this.query(), count: 0 }));

  override render(): TemplateResult {
    const say = words().handOver.list;
    const found = this.live.view?.found ?? 0;
    return html`<asf-section .label=${say.title} .count=${this.live.view ? say.chosen(found) : ''}>
      <p class="reckoned">${say.lead}</p>
      <asf-choice columns="3" .label=${say.which} .options=${(['parts', 'to-buy', 'to-send'] as const).map((value) => ({ value, word: say.lists[value], second: say.listSecond[value] }))} .value=${this.list}
        @asf-change=${(event: CustomEvent<{ value: List }>) => { this.list = event.detail.value; this.file = undefined; }}></asf-choice>
      <asf-choice columns="2" .label=${say.form} .options=${(['html', 'csv'] as const).map((value) => ({ value, word: say.forms[value], second: say.formSecond[value] }))} .value=${this.form}
        @asf-change=${(event: CustomEvent<{ value: Form }>) => { this.form = event.detail.value; this.file = undefined; }}></asf-choice>
      <asf-parts-filters .narrowing=${this.narrowing} @asf-filter=${this.narrow}></asf-parts-filters>
      ${this.list === 'parts' ? nothing : html`<p class="second">${say.decided}</p>`}
      ${this.busy ? html`<asf-preparing .what=${words().handOver.preparing(say.lists[this.list])}></asf-preparing>` : nothing}
      ${this.file ? html`<asf-prepared .file=${this.file} @asf-again=${this.prepare}></asf-prepared>` : nothing}
      ${!this.busy && !this.file ? html`<asf-primary small .verb=${words().handOver.prepare} .cost=${found === 0 ? say.none : say.chosen(found)} ?disabled=${found === 0} @click=${this.prepare}></asf-primary>` : nothing}
      ${this.failed ? failure(this.failed) : nothing}</asf-section>`;
  }

  private query(): PartsQuery {
    const { assembly, place, standing, route } = this.narrowing;
    return { ...(assembly && { assembly }), ...(place && { place }), ...(standing && { standing }), ...(route && { route }) };
  }

  private readonly narrow = (event: CustomEvent<FilterChange>): void => {
    const merged = { ...this.narrowing, ...event.detail };
    this.narrowing = Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined)) as unknown as Narrowing;
    this.file = undefined;
    this.live.soon();
  };

  private readonly prepare = async (): Promise<void> => {
    this.busy = true;
    this.file = undefined;
    this.failed = '';
    try {
      this.file = await desk.prepareList(`${this.list}-${this.form}`, { ...this.query(), group: 'assembly' }, today(), paperWords());
    } catch (error) {
      this.failed = error instanceof Error ? error.message : String(error);
    } finally {
      this.busy = false;
    }
  };
}

export function failure(why: string): TemplateResult {
  const text = words().handOver.failed(why);
  return html`<asf-message kind="alert" .happened=${text.happened} .safe=${text.safe} .todo=${text.todo}><asf-button icon="bring" word=${words().safeKeeping.rescue} href="./rescue.html"></asf-button></asf-message>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-list-out': ListOut } }
