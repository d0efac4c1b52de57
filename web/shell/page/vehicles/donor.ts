import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Change, DonorLine, RecordView } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/button';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import '../styles/terms.css';
import { stanceChoice } from '../suppliers/stance';
import { today } from '../today';
import { words } from '../words';
import { minorDigits, money } from '../words/format';
import { readMoney } from '../words/read';

/** What a donor costs, and what comes back of it. */
@customElement('asf-donor')
export class Donor extends LightElement {
  @property({ attribute: false }) vehicle!: RecordView;
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly donor = new Live(this, 'donor', () => ({ ask: 'donor', vehicle: this.vehicle.id, today: today() }));

  override render(): TemplateResult {
    const say = words().vehicles.costs;
    const { values } = this.vehicle;
    const view = this.donor.view?.vehicle === this.vehicle.id ? this.donor.view : undefined;
    const really = view?.really;
    const isSoldApart = view !== undefined && view.sold.minor !== (values.sold?.minor ?? 0);
    return html`${this.sum('cash', say.cash, say.cashHint)}${this.sum('sold', say.sold, say.soldHint)}
      ${isSoldApart ? html`<asf-leader .label=${say.soldAll} .value=${money(view.sold)}></asf-leader>` : nothing}
      ${really ? html`<asf-leader result .label=${say.really} .value=${money(really)}></asf-leader>` : nothing}
      ${values.bought && really ? html`<p class="reckoned">${say.spent}</p>` : nothing}
      <div class="sheet-picks donor-picks">
        <asf-choice compact columns="2" .label=${say.here} .options=${[{ value: 'no', word: say.notYet }, { value: 'yes', word: say.bought }]} .value=${values.bought ? 'yes' : 'no'}
          @asf-change=${(event: CustomEvent<{ value: string }>) => { void this.here(event.detail.value === 'yes'); }}></asf-choice>
        ${stanceChoice(this.vehicle)}<p class="second">${words().stance.donorHint}</p></div>
      ${view ? html`<asf-section level="3" .label=${say.taken} .count=${view.taken.length ? String(view.taken.length) : say.takenNone}>${this.lines(view.taken)}</asf-section>
        <asf-section level="3" .label=${say.left} .count=${view.left.length ? String(view.left.length) : say.leftNone}><p class="second terms-hint">${say.leftHint}</p>${this.lines(view.left)}</asf-section>` : nothing}`;
  }

  private lines(lines: readonly DonorLine[]): TemplateResult | typeof nothing {
    const say = words().vehicles.costs;
    if (lines.length === 0) return nothing;
    return html`<ul>${lines.map((line) => {
      const name = [tagFigures(line.tag), line.name].filter(Boolean).join(' ') || words().parts.noName;
      const told = [line.chosen ? say.chosen : '', line.sold ? say.soldFor(money(line.sold)) : ''].filter(Boolean).join(' · ');
      const isPiece = line.record.kind === 'part';
      return html`<li class="donor-line"><a class="donor-name" href="#/${isPiece ? 'part' : 'routes'}/${line.part}"><b>${name}</b>${told ? html` <span class="second">${told}</span>` : nothing}</a>
        <asf-button icon="check" word=${say.off} label="${say.off}: ${name}" pressed=${line.off ? 'true' : 'false'} @click=${() => { void this.tick(line, name); }}></asf-button>
        ${isPiece ? html`<div class="donor-sold">${this.sum('sold', say.soldLine, '', line.record)}</div>` : nothing}</li>`;
    })}</ul>`;
  }

  /** Whether something was taken off: of a quote for a part of the job, or of a part that is listed on the donor. */
  private async tick({ record, off }: DonorLine, name: string): Promise<void> {
    const say = words().vehicles.costs;
    const change: Change = record.kind === 'part' ? { off: !off } : off ? { clear: 'fetched' } : { fetched: true };
    await write(record, [change], off ? say.onNow(name) : say.offNow(name));
  }

  private sum(field: 'cash' | 'sold', label: string, hint: string, vehicle = this.vehicle): TemplateResult {
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
