import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Dimension, InspectView, LimitKind, LimitSource, MeasureView, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import '../parts/pick';
import { words } from '../words';
import { asTyped, sign, unitOf } from './amount';
import { typed } from './typed';

const FIGURES = ['least', 'most', 'machining', 'new'] as const;
type Typed = Record<(typeof FIGURES)[number] | 'kind' | 'source' | 'page', string>;

/** What a measure may be, and where that stands. Tells `asf-put` when it is put down. */
@customElement('asf-limit-form')
export class LimitForm extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  @property({ attribute: false }) measure?: MeasureView;
  @property() units: Units = 'metric';
  @state() private typed: Typed = { least: '', most: '', machining: '', new: '', kind: 'minimum', source: 'manual', page: '' };
  @state() private errors: Partial<Typed> = {};

  override connectedCallback(): void {
    super.connectedCallback();
    const { measure } = this;
    if (!measure) return;
    const said = (amount: number | undefined): string => (amount === undefined ? '' : asTyped(amount, measure.dimension, this.units));
    const values = measure.limit?.values;
    this.typed = formKept(this.key, { least: said(values?.least), most: said(values?.most), machining: said(values?.machining_least ?? values?.machining_most), new: said(values?.as_new),
      kind: measure.kind === 'size' ? 'minimum' : measure.kind, source: values?.limit_source ?? 'manual', page: values?.text ?? '' });
  }

  override render(): TemplateResult {
    const say = words().measures;
    const { typed: t } = this;
    const kinds = Object.entries(say.kinds).filter(([value]) => value !== 'size').map(([value, word]) => [value, word] as const);
    const sources = (['manual', 'own', 'usual'] satisfies LimitSource[]).map((value) => ({ value, word: say.sources[value] }));
    const lower = t.kind === 'minimum' || t.kind === 'range';
    const upper = t.kind !== 'minimum';
    return html`<form class="quote-form" novalidate @submit=${this.put}>
      <asf-pick .label=${say.limitForm.kind} .value=${t.kind} .options=${kinds} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ kind: event.detail.value }); }}></asf-pick>
      ${lower ? this.figure('least', say.limitForm.least) : nothing}${upper ? this.figure('most', t.kind === 'difference' ? say.limitForm.differ : say.limitForm.most) : nothing}
      ${t.kind === 'minimum' || t.kind === 'maximum' ? this.figure('machining', say.limitForm.machining, say.limitForm.machiningHint) : nothing}
      ${t.kind === 'difference' ? nothing : this.figure('new', say.limitForm.new)}
      <asf-choice .label=${say.limitForm.source} columns="1" .options=${sources} .value=${t.source} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ source: event.detail.value }); }}></asf-choice>
      <asf-field .label=${say.limitForm.page} .value=${t.page} .hint=${say.limitForm.pageHint} max="200" @input=${this.follow('page')}></asf-field>
      <div class="form-put"><asf-primary small kind="submit" verb=${say.limitForm.put} icon="check"></asf-primary></div></form>`;
  }

  private figure(member: (typeof FIGURES)[number], label: string, hint = ''): TemplateResult {
    const unit = sign(this.measure?.dimension ?? 'length', this.units);
    return html`<asf-field kind="text" .label=${label} .unit=${unit} .hint=${hint} .value=${this.typed[member]} .error=${this.errors[member] ?? ''} max="40" @input=${this.follow(member)}></asf-field>`;
  }

  private get key(): string {
    return `limit/${this.view?.part ?? ''}/${this.measure?.feature ?? ''}`;
  }

  private follow(member: keyof Typed): (event: Event) => void {
    return (event) => { if (event.target instanceof HTMLInputElement) this.keep({ [member]: event.target.value }); };
  }

  private keep(change: Partial<Typed>): void {
    this.typed = { ...this.typed, ...change };
    this.errors = {};
    journal.typing(this.key, JSON.stringify(this.typed));
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { view, measure, typed: t } = this;
    if (!view || !measure) return;
    const say = words().measures.limitForm;
    const read = await Promise.all(FIGURES.map((member) => typed(t[member], unitOf(measure.dimension, this.units))));
    const amounts = Object.fromEntries(FIGURES.map((member, i) => [member, read[i]?.amount])) as Partial<Record<(typeof FIGURES)[number], number>>;
    this.errors = Object.fromEntries(read.flatMap((one, i) => (one.error ? [[FIGURES[i], one.error]] : [])));
    const kind = t.kind as LimitKind;
    const wanted = kind === 'minimum' ? 'least' : 'most';
    if (amounts[wanted] === undefined && !this.errors[wanted]) this.errors = { ...this.errors, [wanted]: say.needed };
    const { least, most } = amounts;
    if (kind === 'range' && least !== undefined && most !== undefined && least > most) this.errors = { ...this.errors, least: say.crossed };
    if (kind === 'difference' && most !== undefined && most < 0) this.errors = { ...this.errors, most: say.negative };
    if (Object.keys(this.errors).length > 0) {
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const changes = limitChanges(kind, measure.dimension, amounts, t.source as LimitSource, t.page.trim());
    const limit = measure.limit;
    const own = limit?.values.of === view.part;
    const { ok } = limit && own
      ? await carryOut({ do: 'change', ids: [limit.id], changes, seen: limit.seen }, say.done)
      : await carryOut({ do: 'create', id: newId(), kind: 'limit', changes: [{ of: view.part }, { feature: measure.feature }, ...changes.filter((change) => !('clear' in change))] }, say.done);
    if (!ok) return;
    journal.typed(this.key);
    this.tell('asf-put', null);
  };
}

/** A limit as changes: what its kind does not have is cleared. */
function limitChanges(kind: LimitKind, dimension: Dimension, amounts: Partial<Record<(typeof FIGURES)[number], number>>, source: LimitSource, page: string): Change[] {
  const lower = kind === 'minimum' || kind === 'range';
  const put = (field: 'least' | 'most' | 'machining_least' | 'machining_most' | 'as_new', amount: number | undefined): Change => (amount === undefined ? { clear: field } : { [field]: amount } as Change);
  return [{ limit_kind: kind }, { dimension }, { limit_source: source }, page ? { text: page } : { clear: 'text' },
    put('least', lower ? amounts.least : undefined), put('most', kind === 'minimum' ? undefined : amounts.most),
    put('machining_least', kind === 'minimum' ? amounts.machining : undefined), put('machining_most', kind === 'maximum' ? amounts.machining : undefined), put('as_new', amounts.new)];
}

declare global { interface HTMLElementTagNameMap { 'asf-limit-form': LimitForm } }
