import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Change, RecordView } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/leader';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import '../styles/terms.css';
import { stanceChoice } from '../suppliers/stance';
import { words } from '../words';
import { minorDigits, money } from '../words/format';
import { readMoney } from '../words/read';
import { reallyCost } from './really-cost';

/** What a donor costs, and what comes back of it. */
@customElement('asf-donor')
export class Donor extends LightElement {
  @property({ attribute: false }) vehicle!: RecordView;
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override render(): TemplateResult {
    const say = words().vehicles.costs;
    const { values } = this.vehicle;
    const really = reallyCost(values);
    return html`${this.sum('cash', say.cash, say.cashHint)}${this.sum('sold', say.sold, say.soldHint)}
      ${really ? html`<asf-leader result .label=${say.really} .value=${money(really)}></asf-leader>` : nothing}
      ${values.bought && really ? html`<p class="reckoned">${say.spent}</p>` : nothing}
      <div class="sheet-picks donor-picks">
        <asf-choice compact columns="2" .label=${say.here} .options=${[{ value: 'no', word: say.notYet }, { value: 'yes', word: say.bought }]} .value=${values.bought ? 'yes' : 'no'}
          @asf-change=${(event: CustomEvent<{ value: string }>) => { void this.here(event.detail.value === 'yes'); }}></asf-choice>
        ${stanceChoice(this.vehicle)}<p class="second">${words().stance.donorHint}</p></div>`;
  }

  private sum(field: 'cash' | 'sold', label: string, hint: string): TemplateResult {
    const { vehicle } = this;
    const currency = this.head.view?.settings.currency ?? 'GBP';
    const value = vehicle.values[field];
    const say = words().sheet.named;
    const save = (text: string, seen: RecordView = vehicle): Promise<string | null> => {
      if (!text.trim()) return putDown(seen, { clear: field }, say.cleared(label));
      const sum = readMoney(text, currency);
      if (!sum) return Promise.resolve(words().vehicles.costs.wrongMoney);
      const change: Change = field === 'cash' ? { cash: sum } : { sold: sum };
      return putDown(seen, change, say.saved(label));
    };
    return html`<asf-edit-line .label=${label} .value=${value ? String(value.minor / 10 ** minorDigits(value.currency)) : ''} .shown=${value ? money(value) : ''} kind="money" .currency=${currency} .hint=${hint}
      key="vehicle/${vehicle.id}/${field}" .record=${vehicle} .save=${save}></asf-edit-line>`;
  }

  private async here(bought: boolean): Promise<void> {
    const say = words().vehicles.costs;
    await write(this.vehicle, [bought ? { bought } : { clear: 'bought' }], `${say.here}: ${bought ? say.bought : say.notYet}`);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-donor': Donor } }
