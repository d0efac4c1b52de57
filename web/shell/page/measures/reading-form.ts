import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Command, InspectView, MeasureView, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { featureWords } from '../judge/said';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import '../parts/pick';
import { words } from '../words';
import { said, sign, unitOf } from './amount';
import { typed } from './typed';

type Typed = Record<'value' | 'spot' | 'instrument' | 'zero' | 'name' | 'resolution' | 'uncertainty', string>;
const EMPTY: Typed = { value: '', spot: '', instrument: '', zero: '', name: '', resolution: '', uncertainty: '' };
const OWN = 'own';

/** A reading: the figure is enough; with what it was measured is remembered. Tells `asf-put` when it is put down. */
@customElement('asf-reading-form')
export class ReadingForm extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  @property({ attribute: false }) measure?: MeasureView;
  @property() units: Units = 'metric';
  @state() private typed: Typed = EMPTY;
  @state() private errors: Partial<Typed> = {};

  override connectedCallback(): void {
    super.connectedCallback();
    this.typed = formKept(this.key, { ...EMPTY, instrument: this.lastInstrument() });
  }

  override render(): TemplateResult {
    const say = words().measures;
    const { typed: t, errors } = this;
    const unit = this.measure ? sign(this.measure.dimension, this.units) : '';
    const spots = [...new Set(this.measure?.readings.map(({ values }) => values.spot ?? '').filter(Boolean))];
    return html`<form class="quote-form" novalidate @submit=${this.put}>
      <asf-field kind="text" .label=${say.form.value} .unit=${unit} .value=${t.value} .hint=${say.form.accepted} .error=${errors.value ?? ''} max="40" @input=${this.follow('value')}></asf-field>
      <asf-field .label=${say.form.spot} .value=${t.spot} .hint=${say.form.spotHint} .suggestions=${spots} max="80" @input=${this.follow('spot')}></asf-field>
      <asf-pick .label=${say.form.instrument} .value=${t.instrument} .options=${this.instruments()} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.keep({ instrument: event.detail.value }); }}></asf-pick>
      ${t.instrument === OWN ? html`<asf-field .label=${say.ownInstrument.name} .value=${t.name} max="80" @input=${this.follow('name')}></asf-field>
        <div class="pair"><asf-field .label=${say.ownInstrument.resolution} .unit=${unit} .value=${t.resolution} .error=${errors.resolution ?? ''} max="40" @input=${this.follow('resolution')}></asf-field>
        <asf-field .label=${say.ownInstrument.uncertainty} .unit=${unit} .value=${t.uncertainty} .error=${errors.uncertainty ?? ''} max="40" @input=${this.follow('uncertainty')}></asf-field></div><p class="second">${say.ownInstrument.uncertaintyHint}</p>` : nothing}
      <asf-field .label=${say.form.zero} .unit=${unit} .value=${t.zero} .hint=${say.form.zeroHint} .error=${errors.zero ?? ''} max="40" @input=${this.follow('zero')}></asf-field>
      <div class="form-put"><asf-primary small kind="submit" verb=${say.form.put} icon="check"></asf-primary></div></form>`;
  }

  private get key(): string {
    return `reading/${this.view?.part ?? ''}/${this.measure?.feature ?? ''}`;
  }

  /** What this was measured with last, else what any length was. */
  private lastInstrument(): string {
    const last = this.measure?.readings.at(-1)?.values.instrument;
    const other = this.measure?.dimension === 'length' ? this.view?.instruments.at(-1)?.id : undefined;
    return last ?? other ?? '';
  }

  private instruments(): readonly (readonly [string, string])[] {
    const say = words().measures;
    const own = this.view?.instruments ?? [];
    const names = own.map(({ values }) => values.name ?? '');
    // Those that are usual measure lengths.
    const all = this.measure?.dimension === 'length' ? this.view?.usual_instruments ?? [] : [];
    const usual = all.filter(({ instrument }) => !names.includes(say.instruments[instrument]));
    return [['', say.form.noInstrument], ...own.map(({ id, values }) => [id, values.name ?? ''] as const),
      ...usual.map(({ instrument }) => [instrument, say.form.usual(say.instruments[instrument])] as const), [OWN, say.form.ownInstrument]];
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
    const { view, measure } = this;
    if (!view || !measure) return;
    const unit = unitOf(measure.dimension, this.units);
    const members = ['value', 'zero', 'resolution', 'uncertainty'] as const;
    const [value, zero, resolution, uncertainty] = await Promise.all(members.map((member) => typed(this.typed[member], unit)));
    this.errors = Object.fromEntries([value, zero, resolution, uncertainty].flatMap((one, i) => (one?.error ? [[members[i], one.error]] : [])));
    for (const [member, width] of [['resolution', resolution], ['uncertainty', uncertainty]] as const) {
      if ((width?.amount ?? 0) < 0) this.errors = { ...this.errors, [member]: words().measures.ownInstrument.negative };
    }
    if (value?.amount === undefined && !this.errors.value) this.errors = { ...this.errors, value: `${words().measures.unreadable.empty} ${words().measures.form.accepted}` };
    if (Object.keys(this.errors).length > 0 || value?.amount === undefined) {
      await this.updateComplete;
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const [instrument, making] = this.instrument(resolution?.amount, uncertainty?.amount);
    const spot = this.typed.spot.trim();
    const changes: Change[] = [{ of: view.part }, { feature: measure.feature }, { measured: value.amount }, { text: this.typed.value.trim() }, { taken: Date.now() },
      ...(spot ? [{ spot }] : []), ...(instrument ? [{ instrument }] : []), ...(zero?.amount === undefined ? [] : [{ zero_error: zero.amount }])];
    const reading: Command = { do: 'create', id: newId(), kind: 'reading', changes };
    const { ok } = await carryOut({ do: 'all', commands: [...making, reading] }, words().measures.form.done(featureWords(measure.feature).name, said(value.amount, measure.dimension, this.units)));
    if (!ok) return;
    journal.typed(this.key);
    this.tell('asf-put', null);
  };

  /** The instrument that was picked, and what makes it where it is not in the job yet. */
  private instrument(resolution: number | undefined, uncertainty: number | undefined): [string, Command[]] {
    const { instrument: picked, name } = this.typed;
    const say = words().measures;
    const usual = this.view?.usual_instruments.find(({ instrument }) => instrument === picked);
    if (!usual && picked !== OWN) return [picked, []];
    const [step, stated] = usual ? [usual.resolution, usual.stated] : [resolution, uncertainty];
    const id = newId();
    const called = usual ? say.instruments[usual.instrument] : name.trim();
    const changes: Change[] = [...(called ? [{ name: called }] : []), ...(step ? [{ resolution: step }] : []), ...(stated ? [{ uncertainty: stated }] : [])];
    return [id, [{ do: 'create', id, kind: 'instrument', changes }]];
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-reading-form': ReadingForm } }
