import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Currency, RecordView, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { massUnit } from '../sheet/mass';
import { write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { EMPTY_TIER, readTier, tierDraft, type TierDraft } from './tier-draft';

/** What carriage costs from a value or a mass on. Tells `asf-put` once it is put down. */
@customElement('asf-tier-form')
export class TierForm extends LightElement {
  @property() supplier = '';
  /** The one that is changed; a new one without. */
  @property({ attribute: false }) tier?: RecordView | undefined;
  @property() currency: Currency = 'GBP';
  @property() units: Units = 'metric';
  @state() private draft: TierDraft = EMPTY_TIER;
  @state() private errors: Partial<TierDraft> = {};

  private get key(): string { return `tier/${this.tier?.id ?? `${this.supplier}/new`}`; }

  override willUpdate(): void {
    if (!this.hasUpdated) this.draft = formKept(this.key, this.tier ? tierDraft(this.tier, this.units) : EMPTY_TIER);
  }

  protected override firstUpdated(changed: PropertyValues<this>): void {
    super.firstUpdated(changed);
    void this.updateComplete.then(() => { this.querySelector<HTMLInputElement>('input')?.focus(); });
  }

  override render(): TemplateResult {
    const say = words().suppliers.tier;
    const { tier } = this;
    return html`<form class="place-form" novalidate @submit=${this.put}>
      <p class="reckoned">${say.one}</p>
      <asf-field kind="money" .label=${say.value} .currency=${this.currency} .value=${this.draft.value} .error=${this.errors.value ?? ''} max="40" @input=${this.follow('value')}></asf-field>
      <asf-field kind="number" .label=${say.mass} .unit=${massUnit(this.units)} .value=${this.draft.mass} .error=${this.errors.mass ?? ''} max="40" @input=${this.follow('mass')}></asf-field>
      <asf-field kind="money" .label=${say.carriage} .currency=${this.currency} .value=${this.draft.carriage} .error=${this.errors.carriage ?? ''} max="40" @input=${this.follow('carriage')}></asf-field>
      <asf-primary small kind="submit" .verb=${say.put} icon="check"></asf-primary>
      ${tier ? html`<asf-button icon="strike" word=${words().suppliers.strike} @click=${() => { void this.strike(tier); }}></asf-button>` : nothing}</form>`;
  }

  private follow(member: keyof TierDraft): (event: Event) => void {
    return (event) => {
      this.draft = { ...this.draft, [member]: textOf(event) };
      this.errors = {};
      journal.typing(this.key, JSON.stringify(this.draft));
    };
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().suppliers.tier;
    const { changes, errors } = readTier(this.draft, this.currency, this.units);
    this.errors = errors;
    if (Object.keys(errors).length > 0) {
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const given = changes.filter((change) => !('clear' in change));
    const ok = this.tier ? await write(this.tier, changes, say.done) : (await carryOut({ do: 'create', id: newId(), kind: 'tier', changes: [{ of: this.supplier }, ...given] }, say.done)).ok;
    if (ok) this.leave();
  };

  private async strike(tier: RecordView): Promise<void> {
    if (await strikeOut(tier, words().suppliers.tier.struck)) this.leave();
  }

  private leave(): void {
    journal.typed(this.key);
    this.tell('asf-put', null);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-tier-form': TierForm } }
