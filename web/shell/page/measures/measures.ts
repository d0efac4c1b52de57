import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InspectView, MeasureView, RecordView, Units } from '../../bridge/protocol';
import { featureWords } from '../judge/said';
import '../kit/button';
import '../kit/dialog';
import '../kit/field';
import '../kit/icon';
import '../kit/leader';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { noteOpen, openBefore } from '../reopening';
import { strikeOut } from '../strike-out';
import '../styles/measures.css';
import { words } from '../words';
import { said, sign } from './amount';
import './limit-form';
import './number-line';
import { governing, proofSaid, settlingSaid } from './proof-said';
import './reading-form';

const PLACE = 'measures';

/** What is measured in a part: limits, readings, and what they prove. */
@customElement('asf-measures')
export class Measures extends LightElement {
  @property({ attribute: false }) view?: InspectView;
  /** To read only. */
  @property({ type: Boolean }) still = false;
  /** Which form is open: `reading|FEATURE`, `limit|FEATURE` or `own`. */
  @state() private open = '';
  @state() private ownName = '';
  @state() private ownError = '';
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override connectedCallback(): void {
    super.connectedCallback();
    const [part, open] = parted(openBefore(PLACE));
    if (part && part === this.view?.part) this.open = open;
  }

  /** Opens the form for a reading of what proves least. */
  measureMore(): void {
    const { view } = this;
    const first = view?.measures.find(({ settling }) => settling) ?? view?.measures.find(({ kind, condition }) => kind !== 'size' && condition === undefined) ?? view?.measures[0];
    if (first) this.turn(`reading|${first.feature}`);
  }

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const say = words().measures;
    return html`<asf-section .label=${say.title} .count=${view.measures.length ? words().judge.measuredOf(view.measures.length) : ''}>
        ${view.measures.map((measure) => this.one(measure))}
        ${this.still ? nothing : html`<div class="measure-acts"><asf-button icon="add" word=${say.other} @click=${() => { this.turn('own'); }}></asf-button></div>`}</asf-section>
      <asf-dialog .open=${this.dialog !== null} .label=${this.dialog?.label ?? ''} .body=${this.dialog?.body ?? nothing} @asf-close=${() => { this.turn(''); }}></asf-dialog>`;
  }

  private get units(): Units { return this.head.view?.settings.units ?? 'metric'; }

  private one(measure: MeasureView): TemplateResult {
    const say = words().measures;
    const { name, where } = featureWords(measure.feature);
    const place = governing(measure);
    const proof = place?.against?.discard ?? place?.against?.machining;
    return html`<div class="measure"><p class="measure-head"><b>${name}</b><span class="second">${sign(measure.dimension, this.units)}</span></p>
      ${where ? html`<p class="second">${where}</p>` : nothing}
      ${place && proof ? html`<asf-number-line .measured=${place.measured} .proof=${proof} .limits=${measure.limits} .dimension=${measure.dimension} .units=${this.units}></asf-number-line>` : nothing}
      ${this.proof(measure)}${this.readings(measure)}
      ${this.still ? nothing : html`<div class="measure-acts">
        <asf-button icon="gauge" word=${say.read} label=${`${say.read}: ${name}`} @click=${() => { this.turn(`reading|${measure.feature}`); }}></asf-button>
        ${measure.kind === 'size' && !measure.limit ? nothing : html`<asf-button icon="mark" word=${measure.limit ? say.limitChange : say.limit} label=${`${measure.limit ? say.limitChange : say.limit}: ${name}`} @click=${() => { this.turn(`limit|${measure.feature}`); }}></asf-button>`}</div>`}</div>`;
  }

  private proof(measure: MeasureView): TemplateResult | typeof nothing {
    const told = proofSaid(measure, this.units);
    const allows = governing(measure)?.against?.allows;
    if (!told || !allows) return nothing;
    const icon = allows === 'scrap' ? 'proved-bad' : allows === 'not-proved' ? 'not-proved' : 'proved';
    const settle = settlingSaid(measure);
    return html`<div class="measure-proof"><asf-icon name=${icon} size="28"></asf-icon><p class="reckoned"><b>${told.verdict}</b> ${told.rest}${settle ? ` ${settle}: ${words().measures.settle.why}.` : measure.settling ? ` ${words().measures.settle.none}` : ''}</p></div>`;
  }

  private readings(measure: MeasureView): TemplateResult {
    const say = words().measures;
    if (measure.readings.length === 0 && measure.other_side.length === 0) {
      const limit = measure.source === undefined ? '' : this.limitSaid(measure);
      return html`<p class="second">${[say.none, limit].filter(Boolean).join(' · ')}</p>`;
    }
    const [last] = measure.readings.slice(-1);
    const bare = measure.kind !== 'size' && measure.source === undefined && last;
    return html`${bare ? html`<p class="second">${say.noLimitMore}</p>` : nothing}<details class="quote-fold measure-fold"><summary>${say.readings(measure.readings.length)}</summary><ul class="findings measure-list">${measure.readings.map((reading) => html`<li>${this.reading(measure, reading)}</li>`)}
      ${measure.other_side.map(({ spot, measured }) => html`<li><p class="second finding-beside">${say.otherSide([words().judge.otherWord, spot].filter(Boolean).join(', '), said(measured.value, measure.dimension, this.units))}</p></li>`)}</ul></details>`;
  }

  private reading(measure: MeasureView, record: RecordView): TemplateResult {
    const { values } = record;
    const value = values.measured === undefined ? values.text ?? '' : said(values.measured, measure.dimension, this.units);
    const instrument = this.view?.instruments.find(({ id }) => id === values.instrument)?.values.name;
    const label = [values.spot, instrument].filter(Boolean).join(' · ') || words().measures.reading;
    return html`<div class="kit-cover"><asf-leader .label=${label} .value=${value}></asf-leader>
      ${this.still ? nothing : html`<asf-button compact icon="strike" word=${words().costing.strike} label=${`${words().costing.strike}: ${label}, ${value}`} @click=${() => { void strikeOut(record, words().measures.undone); }}></asf-button>`}</div>`;
  }

  private limitSaid({ limits: { discard: { least, most } }, dimension, source }: MeasureView): string {
    const say = words().measures;
    const ends = [least !== undefined && `${say.kinds.minimum} ${said(least, dimension, this.units)}`, most !== undefined && `${say.kinds.maximum} ${said(most, dimension, this.units)}`].filter(Boolean).join(', ');
    return ends && source ? `${ends} (${say.sources[source]})` : ends;
  }

  private turn(to: string): void {
    this.open = to;
    noteOpen(PLACE, to && this.view ? `${this.view.part}|${to}` : '');
  }

  private get dialog(): { label: string; body: TemplateResult } | null {
    const say = words().measures;
    const { view } = this;
    const [form, feature] = parted(this.open);
    if (!view || !form) return null;
    if (form === 'own') return { label: say.own.title, body: this.ownForm() };
    const measure = view.measures.find((one) => one.feature === feature) ?? fresh(feature);
    const { name } = featureWords(feature);
    const done = (): void => { this.turn(''); };
    return form === 'limit' ? { label: `${say.limitForm.title}: ${name}`, body: html`<asf-limit-form .view=${view} .measure=${measure} .units=${this.units} @asf-put=${done}></asf-limit-form>` }
      : { label: `${say.form.title}: ${name}`, body: html`<asf-reading-form .view=${view} .measure=${measure} .units=${this.units} @asf-put=${done}></asf-reading-form>` };
  }

  private ownForm(): TemplateResult {
    const say = words().measures.own;
    const put = (event: Event): void => {
      event.preventDefault();
      const name = this.ownName.trim();
      if (name) { this.turn(`limit|${name}`); [this.ownName, this.ownError] = ['', '']; } else this.ownError = say.needed;
    };
    return html`<form class="quote-form" novalidate @submit=${put}>
      <asf-field .label=${say.name} .value=${this.ownName} .error=${this.ownError} max="80" @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) this.ownName = event.target.value; }}></asf-field>
      <div class="form-put"><asf-primary small kind="submit" verb=${say.go}></asf-primary></div></form>`;
  }
}

/** What stands before the first bar, and what after it: the name of a measure of the user's own may hold one itself. */
function parted(text: string): [string, string] {
  const at = text.indexOf('|');
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
}

/** A measure of the user's own, of which nothing is said yet. */
function fresh(feature: string): MeasureView {
  return { feature, dimension: 'length', kind: 'minimum', limits: { discard: {}, machining: {} }, readings: [], places: [], other_side: [] };
}

declare global { interface HTMLElementTagNameMap { 'asf-measures': Measures } }
