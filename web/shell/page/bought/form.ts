import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId, type Beside } from '../../bridge/desk';
import type { Change, Command, Currency } from '../../bridge/protocol';
import { CAMERA, readPicture } from '../camera/pictures-in';
import { carryOut } from '../carry-out';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/field';
import '../kit/icon';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import { tagFigures } from '../parts/tag-figures';
import { say as aloud } from '../say';
import { words } from '../words';
import { money } from '../words/format';
import { readMoney } from '../words/read';

const KEY = 'bought/new';
type Typed = Record<'cash' | 'what' | 'from' | 'part', string>;
const EMPTY: Typed = { cash: '', what: '', from: '', part: '' };

/** A purchase: the sum is enough. Tells `asf-put` when it is put down. */
@customElement('asf-bought-form')
export class BoughtForm extends LightElement {
  @property() currency: Currency = 'GBP';
  @state() private typed: Typed = formKept(KEY, EMPTY);
  @state() private error = '';
  @state() private receipts: readonly Beside[] = [];
  private readonly parts = new Live(this, 'parts', () => ({ ask: 'parts', group: 'none' }));

  protected override firstUpdated(changed: PropertyValues<this>): void {
    super.firstUpdated(changed);
    void this.updateComplete.then(() => { this.querySelector<HTMLInputElement>('input.field-figure')?.focus(); });
  }

  override render(): TemplateResult {
    const say = words().bought.form;
    const rows = this.parts.view?.rows ?? [];
    return html`<form class="quote-form" novalidate @submit=${this.put}>
      <asf-field kind="money" .label=${say.cash} .currency=${this.currency} .value=${this.typed.cash} .error=${this.error} max="40" @input=${this.follow('cash')}></asf-field>
      <label class="second-button bring-pick"><input class="unseen" type="file" accept=${CAMERA} capture="environment" @change=${this.photographed}><asf-icon name="camera"></asf-icon><span>${this.receipts.length ? say.another : say.receipt}</span></label>
      ${this.receipts.length ? html`<p class="second" role="status">${words().bought.holds(this.receipts.length)}</p>` : nothing}
      <asf-field .label=${say.what} .value=${this.typed.what} max="200" @input=${this.follow('what')}></asf-field>
      <asf-field .label=${say.from} .value=${this.typed.from} max="200" @input=${this.follow('from')}></asf-field>
      ${rows.length ? html`<asf-pick .label=${say.part} .value=${this.typed.part} .options=${[['', say.noPart], ...rows.map(({ id, tag, name }) => [id, [tagFigures(tag), name].filter(Boolean).join(' ')] as const)]} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ part: event.detail.value }); }}></asf-pick>` : nothing}
      <div class="form-put"><asf-primary small kind="submit" verb=${say.put} icon="check"></asf-primary></div></form>`;
  }

  private follow(member: keyof Typed): (event: Event) => void {
    return (event) => { if (event.target instanceof HTMLInputElement) this.keep({ [member]: event.target.value }); };
  }

  private keep(change: Partial<Typed>): void {
    this.typed = { ...this.typed, ...change };
    this.error = '';
    journal.typing(KEY, JSON.stringify(this.typed));
  }

  private readonly photographed = async (event: Event): Promise<void> => {
    if (!(event.target instanceof HTMLInputElement)) return;
    const [file] = event.target.files ?? [];
    event.target.value = '';
    if (!file) return;
    try {
      this.receipts = [...this.receipts, await readPicture(file)];
    } catch {
      aloud(words().bought.photoLost);
    }
  };

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const cash = readMoney(this.typed.cash, this.currency);
    if (!cash) {
      this.error = words().bought.form.wrongMoney;
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const id = newId();
    const taken = Date.now();
    const { what, from, part } = this.typed;
    const changes: Change[] = [{ cash }, { taken }, ...(what.trim() ? [{ name: what.trim() }] : []), ...(from.trim() ? [{ from: from.trim() }] : []), ...(part ? [{ part }] : [])];
    const photos = this.receipts.map(({ bytes, media_type }, i): Command => ({ do: 'create', id: newId(), kind: 'photo', changes: [
      { of: id }, { moment: 'off' }, { shot: 'plain' }, { taken }, { order: i + 1 }, { blob: `$${i}` }, { length: bytes.byteLength }, { media_type }] }));
    const { ok } = await carryOut({ do: 'all', commands: [{ do: 'create', id, kind: 'purchase', changes }, ...photos] }, words().bought.done(money(cash)), [...this.receipts]);
    if (!ok) return;
    journal.typed(KEY);
    [this.typed, this.receipts] = [EMPTY, []];
    this.tell('asf-put', null);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-bought-form': BoughtForm } }
