import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, newId } from '../../bridge/desk';
import type { Change, Problem, RatiosUnread, RecordView, Swap, TyreUnread, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { sign, unitOf } from '../measures/amount';
import { typed } from '../measures/typed';
import '../parts/pick';
import { write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { draftOf, EMPTY_GEARING, FIELD, readGearing, SWAPS, type GearingDraft, type GearingMember } from './draft';

/** A gearing put down or changed: axle, gears, overdrive, tyre. Tells `asf-put` once it is. */
@customElement('asf-gearing-form')
export class GearingForm extends LightElement {
  /** The one that is changed; a new one without. */
  @property({ attribute: false }) record?: RecordView | undefined;
  @property() units: Units = 'metric';
  /** Where a new one stands in the swap. */
  @property() swap: Swap = 'before';
  /** A new one begins like this one: often only the axle differs. */
  @property({ attribute: false }) like?: RecordView | undefined;
  @state() private draft: GearingDraft = EMPTY_GEARING;
  @state() private errors: Partial<GearingDraft> = {};
  private begun: GearingDraft = EMPTY_GEARING;
  private seen: RecordView | undefined;
  private busy = false;
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  private get key(): string { return `gearing/${this.record?.id ?? 'new'}`; }

  override willUpdate(): void {
    if (this.hasUpdated) return;
    this.seen = this.record;
    // What a new one begins with counts as typed: all of it is written.
    this.begun = this.record ? draftOf(this.record, this.units) : { ...EMPTY_GEARING, swap: '', overdriveOn: '' };
    const begin = this.record ? this.begun : { ...(this.like ? { ...draftOf(this.like, this.units), name: '', remark: '' } : EMPTY_GEARING), swap: this.swap };
    this.draft = formKept(this.key, begin);
  }

  protected override firstUpdated(changed: PropertyValues<this>): void {
    super.firstUpdated(changed);
    if (!this.record) void this.updateComplete.then(() => { this.querySelector<HTMLInputElement>('input')?.focus(); });
  }

  override render(): TemplateResult {
    const say = words().gearing;
    const { form } = say;
    const { record, draft, units } = this;
    const vehicles = this.head.view?.vehicles ?? [];
    const length = sign('length', units);
    const fold = draft.turns || draft.diameter || this.errors.turns || this.errors.diameter;
    return html`<form class="place-form" novalidate @submit=${this.put}>
      ${this.field('name', form.name, form.nameHint)}
      <asf-choice columns="3" .label=${form.swap} .options=${SWAPS.map((value) => ({ value, word: say.swaps[value] }))} .value=${draft.swap} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ swap: event.detail.value }); }}></asf-choice>
      ${vehicles.length > 1 ? html`<asf-pick .label=${form.vehicle} .options=${[['', form.anyVehicle] as const, ...vehicles.map(({ id, values }) => [id, values.name ?? say.noName] as const)]} .value=${draft.vehicle} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ vehicle: event.detail.value }); }}></asf-pick>` : nothing}
      ${this.field('axle', form.axle, form.axleHint, 'number')}
      ${this.field('gears', form.gears, form.gearsHint)}
      ${this.field('overdrive', form.overdrive, form.overdriveHint, 'number')}
      ${draft.overdrive.trim() ? html`<asf-choice columns="3" .label=${form.overdriveOn} .options=${Object.entries(form.overdriveOns).map(([value, word]) => ({ value, word }))} .value=${draft.overdriveOn} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ overdriveOn: event.detail.value }); }}></asf-choice>` : nothing}
      ${this.field('tyre', form.tyre, form.tyreHint)}
      ${this.field('circumference', form.circumference, form.circumferenceHint, 'number', length)}
      <details class="quote-fold" ?open=${Boolean(fold)}><summary>${form.more}</summary><div class="quote-form">
        ${this.field('turns', form.turns(units), form.turnsHint, 'number')}
        ${this.field('diameter', form.diameter, form.diameterHint, 'number', length)}</div></details>
      ${this.field('highest', form.highest, form.highestHint, 'number', form.turnsUnit)}
      ${this.field('remark', form.remark, '', 'area')}
      <div class="form-put"><asf-primary small kind="submit" .verb=${say.put} icon="check"></asf-primary></div>
      ${record ? html`<div class="pair"><asf-button icon="history" word=${words().history.title} href="#/history/${record.id}"></asf-button>
        <asf-button icon="strike" word=${say.strike} @click=${() => { void this.strike(record); }}></asf-button></div>` : nothing}</form>`;
  }

  private field(member: GearingMember, label: string, hint: string, kind: 'text' | 'number' | 'area' = 'text', unit = ''): TemplateResult {
    return html`<asf-field .kind=${kind} .label=${label} .hint=${hint} .unit=${unit} .value=${this.draft[member]} .error=${this.errors[member] ?? ''} max=${kind === 'area' ? 5000 : 200} @input=${(event: Event) => { this.keep({ [member]: textOf(event) }); }}></asf-field>`;
  }

  private keep(change: Partial<GearingDraft>): void {
    this.draft = { ...this.draft, ...(change.tyre !== undefined && this.ofOtherTyre()), ...change };
    this.errors = {};
    journal.typing(this.key, JSON.stringify(this.draft));
  }

  /** What was measured on the tyre of the one that a new one begins like does not hold for another tyre. */
  private ofOtherTyre(): Partial<GearingDraft> {
    if (this.record || !this.like) return {};
    const like = draftOf(this.like, this.units);
    const taken = (['circumference', 'turns', 'diameter'] as const).filter((member) => this.draft[member] === like[member]);
    return Object.fromEntries(taken.map((member) => [member, '']));
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (this.busy) return;
    this.busy = true;
    try {
      const { changes, errors } = readGearing(this.draft, this.begun, this.units);
      const [measured, wrong] = await Promise.all([this.lengths(), this.unread()]);
      await this.wrong({ ...wrong, ...measured.errors, ...errors });
      if (Object.keys(this.errors).length > 0) return;
      await this.write([...changes, ...measured.changes]);
    } finally {
      this.busy = false;
    }
  };

  private async write(changes: Change[]): Promise<void> {
    const { record, seen } = this;
    const message = words().gearing.done(this.draft.name.trim());
    if (record && seen) {
      if (changes.length === 0 || await write(seen, changes, message)) this.leave();
      return;
    }
    const answer = await carryOut({ do: 'create', id: newId(), kind: 'gearing', changes: changes.filter((change) => !('clear' in change)) }, message);
    if (answer.ok) this.leave();
    else await this.wrong(besideFields(answer.problems));
  }

  private async wrong(errors: Partial<GearingDraft>): Promise<void> {
    this.errors = errors;
    if (Object.keys(errors).length === 0) return;
    await this.updateComplete;
    await new Promise((soon) => { requestAnimationFrame(soon); });
    this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }

  /** What was measured, as the core reads lengths. */
  private async lengths(): Promise<{ changes: Change[]; errors: Partial<GearingDraft> }> {
    const changes: Change[] = [];
    const errors: Partial<GearingDraft> = {};
    for (const member of ['circumference', 'diameter'] as const) {
      const text = this.draft[member].trim();
      if (text === this.begun[member].trim()) continue;
      const { amount, error } = await typed(text, unitOf('length', this.units));
      if (error) errors[member] = error;
      else changes.push(amount === undefined ? { clear: member } : member === 'circumference' ? { circumference: amount } : { diameter: amount });
    }
    return { changes, errors };
  }

  /** What of marking and gears cannot be read. */
  private async unread(): Promise<Partial<GearingDraft>> {
    const view = await desk.ask({ ask: 'gearing-typed', tyre: this.draft.tyre, gears: this.draft.gears });
    return view.view === 'gearing-typed' ? besideFields(view.problems ?? []) : {};
  }

  private async strike(record: RecordView): Promise<void> {
    if (await strikeOut(record, words().gearing.struck(record.values.name ?? words().gearing.noName))) this.leave();
  }

  private leave(): void {
    journal.typed(this.key);
    this.tell('asf-put', null);
  }
}

/** Problems, each beside its field. */
function besideFields(problems: readonly Problem[]): Partial<GearingDraft> {
  const found: Partial<GearingDraft> = {};
  for (const problem of problems) {
    const member = (Object.keys(FIELD) as GearingMember[]).find((one) => FIELD[one] === problem.place.field);
    if (member) found[member] = said(problem);
  }
  return found;
}

function said(problem: Problem): string {
  const { why } = words().gearing;
  if (problem.code === 'tyre-unreadable') return `${why.tyre[problem.values['why'] as TyreUnread]} ${why.tyreThen}`;
  if (problem.code === 'ratios-unreadable') return why.gears[problem.values['why'] as RatiosUnread];
  return words().problems.sentence(problem);
}

declare global { interface HTMLElementTagNameMap { 'asf-gearing-form': GearingForm } }
