import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Certainty, Change, Currency, QuoteCost, Route } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/confidence';
import '../kit/field';
import type { FieldKind } from '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { write } from '../sheet/write';
import { words } from '../words';
import type { Confidence } from '../words/confidence';
import { draftKept, draftOf, emptyDraft, readDraft, type DraftErrors, type QuoteDraft } from './quote-draft';
import { certaintyOf, confidenceOf, ROUTES_IN_ORDER, routeWord } from './route-word';

type Text = 'from' | 'cash' | 'ownTime' | 'chance' | 'strip';
type How = 'cashCertainty' | 'ownTimeCertainty' | 'chanceCertainty';

/** Enters or changes a quote: one figure is enough. Tells `asf-put` when it is put down. */
@customElement('asf-quote-form')
export class QuoteForm extends LightElement {
  @property() of = '';
  @property() currency: Currency = 'GBP';
  /** The one that is changed; a new one without. */
  @property({ attribute: false }) quote?: QuoteCost | undefined;
  /** Routes that have no quote yet come first to mind. */
  @property() route: Route = 'repair-here';
  @state() private draft: QuoteDraft = emptyDraft('repair-here');
  @state() private errors: DraftErrors = {};

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('of') || changed.has('quote')) this.draft = draftKept(this.key) ?? (this.quote ? draftOf(this.quote) : emptyDraft(this.route));
  }

  override render(): TemplateResult {
    const say = words().costing.form;
    const { draft } = this;
    return html`<form class="quote-form" novalidate @submit=${this.put}>
      <asf-choice columns="2" compact .label=${say.route} .options=${ROUTES_IN_ORDER.map((value) => ({ value, word: routeWord(value) }))} .value=${draft.route} @asf-change=${(event: CustomEvent<{ value: Route }>) => { this.change({ route: event.detail.value }); }}></asf-choice>
      <p class="reckoned">${say.one}</p>
      ${this.figure('cash', 'cashCertainty', say.cash, 'money', say.sure.cash)}
      ${this.figure('ownTime', 'ownTimeCertainty', say.ownTime, 'hours', say.sure.own_time)}
      ${this.figure('chance', 'chanceCertainty', say.chance, 'number', say.sure.chance, say.ofHundred)}
      ${draft.chance.trim() ? this.field('strip', say.strip, 'hours') : nothing}
      ${this.field('from', say.from, 'text', say.fromHint)}
      <asf-primary small kind="submit" verb=${say.put} icon="check"></asf-primary></form>`;
  }

  private figure(text: Text, how: How, label: string, kind: FieldKind, sure: string, unit = ''): TemplateResult {
    return html`<div class="quote-figure">${this.field(text, label, kind, '', unit)}${this.draft[text].trim()
      ? html`<asf-confidence .label=${sure} .value=${confidenceOf(this.draft[how])} @asf-change=${(event: CustomEvent<{ value: Confidence }>) => { this.change({ [how]: certaintyOf(event.detail.value) as Certainty }); }}></asf-confidence>` : nothing}</div>`;
  }

  private field(text: Text, label: string, kind: FieldKind, hint = '', unit = ''): TemplateResult {
    const error = text === 'from' ? '' : this.errors[text] ?? '';
    return html`<asf-field .label=${label} .kind=${kind} .currency=${this.currency} .hint=${hint} .unit=${unit} .error=${error} .value=${this.draft[text]} max="200" @input=${(event: Event) => {
      if (event.target instanceof HTMLInputElement) this.change({ [text]: event.target.value });
    }}></asf-field>`;
  }

  private get key(): string {
    return `quote/${this.of}/${this.quote?.id ?? 'new'}`;
  }

  private change(change: Partial<QuoteDraft>): void {
    this.draft = { ...this.draft, ...change };
    this.errors = {};
    journal.typing(this.key, JSON.stringify(this.draft));
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { changes, errors } = readDraft(this.draft, this.currency);
    this.errors = errors;
    if (Object.keys(errors).length > 0) {
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const message = words().costing.form.done(routeWord(this.draft.route));
    const ok = this.quote ? await write(this.quote.record, changes, message) : await this.create(changes, message);
    if (!ok) return;
    journal.typed(this.key);
    this.draft = emptyDraft(this.route);
    this.tell('asf-put', null);
  };

  private async create(changes: Change[], message: string): Promise<boolean> {
    const given = changes.filter((change) => !('clear' in change));
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'quote', changes: [{ of: this.of }, ...given] }, message);
    return ok;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-quote-form': QuoteForm } }
