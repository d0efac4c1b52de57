import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { CostView, QuoteCost, RateBasis, RecordView, Route, StartingValues, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/confidence';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import { write } from '../sheet/write';
import '../styles/terms.css';
import { words } from '../words';
import type { Confidence } from '../words/confidence';
import { hours, number } from '../words/format';
import { FIGURES, type Figure } from './figure-kinds';
import { draftKept, draftOf, emptyDraft, readDraft, withStartingValues, type DraftErrors, type Judged, type QuoteDraft } from './quote-draft';
import './quote-more';
import { certaintyOf, confidenceOf, ROUTES_IN_ORDER, routeWord } from './route-word';

/** What a price is for one of, in the units of the job. */
const BASES: Record<Units, readonly RateBasis[]> = {
  metric: ['piece', 'square-centimetre', 'square-decimetre', 'square-metre', 'kilogram'], inch: ['piece', 'square-inch', 'square-foot', 'pound'],
};

const KINDS = { money: 'money', hours: 'hours', chance: 'number', years: 'number', days: 'number', rate: 'number' } as const;

/** Enters or changes a quote: one figure is enough. Tells `asf-put` when it is put down. */
@customElement('asf-quote-form')
export class QuoteForm extends LightElement {
  @property({ attribute: false }) view!: CostView;
  /** The one that is changed; a new one without. */
  @property({ attribute: false }) quote?: QuoteCost | undefined;
  /** Routes that have no quote yet come first to mind. */
  @property() route: Route = 'repair-here';
  @state() private draft: QuoteDraft = emptyDraft('repair-here', 'GBP');
  @state() private errors: DraftErrors = {};
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly suppliers = new Live(this, 'suppliers', () => ({ ask: 'suppliers' }));
  private keyShown = '';

  override willUpdate(changed: PropertyValues<this>): void {
    if ((!changed.has('view') && !changed.has('quote')) || this.keyShown === this.key) return;
    this.keyShown = this.key;
    this.draft = draftKept(this.key) ?? (this.quote ? draftOf(this.quote, this.view.currency) : emptyDraft(this.route, this.view.currency));
  }

  /** On a desk the price is typed at once; on a phone no keyboard lies over the routes. */
  protected override firstUpdated(changed: PropertyValues<this>): void {
    super.firstUpdated(changed);
    if (!matchMedia('(min-width: 62.5em)').matches) return;
    void this.updateComplete.then(() => { requestAnimationFrame(() => { this.querySelector<HTMLInputElement>('input.field-figure')?.focus(); }); });
  }

  override render(): TemplateResult {
    const say = words().costing.form;
    const { draft, starting } = this;
    return html`<form class="quote-form" novalidate @submit=${this.put}>
      <asf-choice columns="2" compact .label=${say.route} .options=${ROUTES_IN_ORDER.map((value) => ({ value, word: routeWord(value), second: this.view.left.includes(value) ? '' : say.notLeft }))} .value=${draft.route} @asf-change=${(event: CustomEvent<{ value: Route }>) => { this.change({ route: event.detail.value }); }}></asf-choice>
      ${draft.route === 'donor' ? this.donor() : nothing}
      <p class="reckoned">${say.one}</p>
      ${this.judged('cash', say.sure.cash)}
      ${draft.route === 'send-out' || draft.per ? this.per() : nothing}
      ${this.judged('own_time', say.sure.own_time, starting && say.starting(hours(starting.own_time)))}
      ${this.judged('chance', say.sure.chance, starting && say.starting(number(starting.chance / 100)))}
      ${draft.text.chance.trim() ? this.figure('strip_again') : nothing}
      <asf-field .label=${say.from} hint=${say.fromHint} .value=${draft.from} .suggestions=${this.fromWhom()} max="200" @input=${(event: Event) => {
        if (event.target instanceof HTMLInputElement) this.change({ from: event.target.value });
      }}></asf-field>
      <asf-quote-more .view=${this.view} .quote=${this.quote} .draft=${draft} .errors=${this.errors} .figure=${this.figure} .judged=${this.judged} .terms=${this.terms()} .per=${draft.route === 'send-out' || draft.per ? nothing : this.per()} @asf-change=${(event: CustomEvent<Partial<QuoteDraft>>) => { this.change(event.detail); }}></asf-quote-more>
      <div class="form-put"><asf-primary small kind="submit" verb=${say.put} icon="check"></asf-primary></div></form>`;
  }

  /** Which donor it comes from: what that one costs is paid once, however much of it is used. */
  private donor(): TemplateResult {
    const say = words().costing.form;
    const donors = (this.head.view?.vehicles ?? []).filter(({ struck, values }) => !struck && values.donor);
    if (donors.length === 0) return html`<p class="reckoned">${say.noDonor}</p>`;
    return html`<div class="donor-pick"><asf-pick .label=${say.donor} .value=${this.draft.vehicle} .options=${[['', say.donorNotSaid], ...donors.map(({ id, values }) => [id, values.name ?? words().vehicles.noName] as const)]}
      @asf-change=${(event: CustomEvent<{ value: string }>) => { event.stopPropagation(); this.change({ vehicle: event.detail.value }); }}></asf-pick><p class="field-hint">${say.donorHint}</p></div>`;
  }

  /** What the price is for: all of it, or one piece, area or mass. */
  private per(): TemplateResult {
    const say = words().costing.form;
    const { per } = this.draft;
    const units = this.head.view?.settings.units ?? 'metric';
    const usual = BASES[units].includes(per || 'piece') ? BASES[units] : [...BASES[units], per || 'piece' as const];
    const hint = !per ? '' : per === 'piece' ? say.perPiece : per === 'kilogram' || per === 'pound' ? say.perMass : say.perArea;
    return html`<div class="donor-pick"><asf-pick .label=${say.per} .value=${per} .options=${[['', say.perAll], ...usual.map((basis) => [basis, say.perOne[basis]] as const)]}
      @asf-change=${(event: CustomEvent<{ value: RateBasis | '' }>) => { event.stopPropagation(); this.change({ per: event.detail.value }); }}></asf-pick>${hint ? html`<p class="field-hint">${hint}</p>` : nothing}</div>`;
  }

  /** Names as they are known already: a quote is found by them. */
  private fromWhom(): string[] {
    const { suppliers = [], unnamed = [] } = this.suppliers.view ?? {};
    return [...suppliers.map(({ record }) => record.values.name ?? ''), ...unnamed.map(({ name }) => name)].filter(Boolean);
  }

  /** The supplier that is named, spaces and case aside. */
  private terms(): RecordView | undefined {
    const called = (name: string | undefined): string => (name ?? '').trim().replace(/\s+/g, ' ').toLowerCase();
    const from = called(this.draft.from);
    return from ? this.suppliers.view?.suppliers.find(({ record }) => called(record.values.name) === from)?.record : undefined;
  }

  /** What stands in for what is not said; an older quote keeps what it has. */
  private get starting(): StartingValues | undefined {
    return this.quote ? undefined : this.view.starting.find(({ route }) => route === this.draft.route);
  }

  private readonly judged = (figure: Judged, sure: string, hint = ''): TemplateResult =>
    html`<div class="quote-figure">${this.figure(figure, hint)}${this.draft.text[figure].trim()
      ? html`<asf-confidence .label=${sure} .value=${confidenceOf(this.draft.how[figure])} @asf-change=${(event: CustomEvent<{ value: Confidence }>) => { event.stopPropagation(); this.change({ how: { ...this.draft.how, [figure]: certaintyOf(event.detail.value) } }); }}></asf-confidence>` : nothing}</div>`;

  private readonly figure = (figure: Figure, hint = ''): TemplateResult => {
    const say = words().costing.form;
    const kind = FIGURES[figure];
    return html`<asf-field .label=${say.figure[figure]} .kind=${KINDS[kind]} .currency=${this.draft.currency} .hint=${hint} .unit=${kind === 'money' || kind === 'hours' ? '' : say.unit[kind]} .error=${this.errors[figure] ?? ''} .value=${this.draft.text[figure]} max="40" @input=${(event: Event) => {
      if (event.target instanceof HTMLInputElement) this.change({ text: { ...this.draft.text, [figure]: event.target.value } });
    }} @asf-change=${(event: Event) => { event.stopPropagation(); }}></asf-field>`;
  };

  private get key(): string {
    return `quote/${this.view.part}/${this.quote?.id ?? 'new'}`;
  }

  private change(change: Partial<QuoteDraft>): void {
    this.draft = { ...this.draft, ...change };
    this.errors = {};
    journal.typing(this.key, JSON.stringify(this.draft));
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { changes, errors } = readDraft(this.draft);
    this.errors = errors;
    if (Object.keys(errors).length > 0) {
      for (const folded of this.querySelectorAll('details')) folded.open = true;
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const message = words().costing.form.done(routeWord(this.draft.route));
    if (!(await this.store(changes, message))) return;
    journal.typed(this.key);
    this.keyShown = '';
    this.tell('asf-put', null);
  };

  private async store(changes: ReturnType<typeof readDraft>['changes'], message: string): Promise<boolean> {
    if (this.quote) return write(this.quote.record, changes, message);
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'quote', changes: [{ of: this.view.part }, ...withStartingValues(changes, this.starting)] }, message);
    return ok;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-quote-form': QuoteForm } }
