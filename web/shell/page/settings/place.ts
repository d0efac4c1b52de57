import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Aim, Change, FieldName, RecordView, Side, Units, Vocabulary } from '../../bridge/protocol';
import { KeepingWord } from '../frame/keeping-word';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/head';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import type { Address } from '../places';
import { whoDecides } from '../routes/who-dialog';
import '../sheet/conflict';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import '../styles/sheet.css';
import { setSpeech, words } from '../words';
import { count, currencySign, dayOfYear, hours, minorDigits, money, number } from '../words/format';
import { readMoney, readNumber } from '../words/read';
import { hoursText, readLimit, type Limit } from './limits';
import { AIMS } from './aims';

const CURRENCIES = ['GBP', 'EUR', 'USD', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'CAD', 'AUD', 'NZD', 'JPY'];

/** Days that comparing takes until somebody says otherwise, as the core counts them. */
const USUAL_CHECKING = 1;

/** Settings of the job, which go with its job file, and of this device, which stay here. */
@customElement('asf-place-settings')
export class PlaceSettings extends LightElement {
  @property({ attribute: false }) address?: Address;
  private readonly live = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().settings;
    return html`<asf-head .name=${say.title} .second=${this.live.view?.job.values.name ?? ''} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body">${this.ofJob()}${this.ofDevice()}
        <asf-section .label=${say.links}><div class="pair">
          <asf-button icon="gauge" word=${say.selfTest} href="#/self-test"></asf-button>
          <asf-button icon="kept" word=${say.safeKeeping} href="#/safe-keeping"></asf-button></div></asf-section></div>`;
  }

  private ofJob(): TemplateResult | typeof nothing {
    const { view } = this.live;
    if (!view) return nothing;
    const say = words().settings;
    const { job, settings } = view;
    return html`<asf-section .label=${say.ofJob} .count=${say.ofJobCount}>
      ${job.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict}></asf-conflict>`)}
      <asf-edit-line .label=${say.name} .value=${job.values.name ?? ''} key="job/${job.id}/name" .record=${job} .save=${(text: string, record?: RecordView) => this.put(say.name, text.trim() ? { name: text.trim() } : { clear: 'name' }, record)}></asf-edit-line>
      <asf-edit-line .label=${say.hour} .value=${this.hourText()} .shown=${html`${money(settings.hour_value)}${this.starting('hour_value')}`} kind="money" .currency=${settings.currency} .hint=${say.hourHint} key="job/${job.id}/hour" .record=${job} .save=${this.hour}></asf-edit-line>
      ${this.plain('years_kept', say.years, String(settings.years_kept), count(settings.years_kept, 'year'), say.yearsHint, 1, 100, 1)}
      ${this.plain('interest', say.interest, plainNumber(settings.interest / 100), say.percent(number(settings.interest / 100, 2)), say.interestHint, 0, 50, 100)}
      ${this.plain('tax_rate', say.tax, plainNumber(settings.tax_rate / 100), say.percent(number(settings.tax_rate / 100, 2)), say.taxHint, 0, 100, 100)}
      ${this.plain('checking_days', say.checking, String(job.values.checking_days ?? USUAL_CHECKING), count(job.values.checking_days ?? USUAL_CHECKING, 'day'), say.checkingHint, 0, 365, 1)}
      <asf-edit-line .label=${say.threshold} .value=${String(settings.threshold.minor / 10 ** minorDigits(settings.currency))} .shown=${html`${money(settings.threshold)}${this.starting('threshold')}`} kind="money" .currency=${settings.currency} .hint=${say.thresholdHint} key="job/${job.id}/threshold" .record=${job} .save=${this.threshold}></asf-edit-line>
      </asf-section>
      <asf-section .label=${say.limits} .count=${say.limitsCount}>
        ${this.limit('budget', say.budget, settings.budget ? String(settings.budget.minor / 10 ** minorDigits(settings.budget.currency)) : '', settings.budget ? money(settings.budget) : '', say.budgetHint)}
        ${this.limit('own_hours', say.ownHours, settings.own_hours === undefined ? '' : hoursText(settings.own_hours), settings.own_hours === undefined ? '' : hours(settings.own_hours), say.ownHoursHint)}
        ${this.limit('latest', say.latest, settings.latest ?? '', settings.latest ? dayOfYear(new Date(`${settings.latest}T00:00`)) : '', say.latestHint)}</asf-section>
      <div class="settings-choices">
        <asf-pick .label=${say.currency} .options=${this.currencies()} .value=${settings.currency} @asf-change=${(event: CustomEvent<{ value: string }>) => { void this.currency(event.detail.value); }}></asf-pick>
        <p class="second">${say.currencyNote}</p>
        ${this.choice<Vocabulary>(say.words, 'vocabulary', settings.vocabulary, (['british', 'american'] as const).map((value) => ({ value, word: say.wordOptions[value], second: say.wordSecond[value] })), (vocabulary) => { setSpeech(vocabulary); return { vocabulary }; })}
        ${this.choice<Units>(say.units, 'units', settings.units, (['metric', 'inch'] as const).map((value) => ({ value, word: say.unitOptions[value] })), (units) => ({ units }))}
        ${this.choice<Aim>(say.aim, 'aim', settings.aim, AIMS.map((value) => ({ value, word: say.aims[value], second: say.aimSecond[value] })), (aim) => ({ aim }))}
        ${this.choice<Side>(say.driver, 'driver_side', settings.driver_side, (['left', 'right'] as const).map((value) => ({ value, word: say.driverOptions[value] })), (driver_side) => ({ driver_side }))}
        <p class="second">${say.driverHint}</p></div>`;
  }

  /** A figure of the job between bounds; it is kept in steps of `per` parts of what is typed. */
  private plain(field: 'years_kept' | 'interest' | 'tax_rate' | 'checking_days', label: string, value: string, shown: string, hint: string, least: number, most: number, per: number): TemplateResult {
    const save = async (text: string, record?: RecordView): Promise<string | null> => {
      const figure = readNumber(text);
      if (figure === null || figure < least || figure > most || (per === 1 && !Number.isInteger(figure))) return words().settings.wrongNumber(least, most);
      return this.put(label, ({ [field]: Math.round(figure * per) } as Record<typeof field, number>) as Change, record);
    };
    return html`<asf-edit-line .label=${label} .value=${value} .shown=${html`${shown}${this.starting(field)}`} kind="number" .hint=${hint} key="job/${this.live.view?.job.id ?? ''}/${field}" .record=${this.live.view?.job} .save=${save}></asf-edit-line>`;
  }

  /** What a plan must keep within; empty sets no limit. */
  private limit(field: Limit, label: string, value: string, shown: string, hint: string): TemplateResult {
    const job = this.live.view?.job;
    const save = async (text: string, record?: RecordView): Promise<string | null> => {
      const change = readLimit(field, text, this.live.view?.settings.currency ?? 'GBP');
      return typeof change === 'string' ? change : this.put(label, change, record);
    };
    const kind = ({ budget: 'money', own_hours: 'hours', latest: 'day' } as const)[field];
    return html`<asf-edit-line .label=${label} .value=${value} .shown=${shown || html`<span class="second">${words().settings.noLimit}</span>`} .kind=${kind} .currency=${this.live.view?.settings.currency ?? 'GBP'} .hint=${hint} key="job/${job?.id ?? ''}/${field}" .record=${job} .save=${save}></asf-edit-line>`;
  }

  private choice<T extends string>(label: string, field: FieldName, value: T, options: readonly { value: T; word: string; second?: string }[], change: (value: T) => Change): TemplateResult {
    return html`<asf-choice columns="2" .label=${html`${label}${this.starting(field)}`} .options=${options} .value=${value}
      @asf-change=${(event: CustomEvent<{ value: T }>) => { void this.put(label, change(event.detail.value)); }}></asf-choice>`;
  }

  /** What nobody has set yet is marked. */
  private starting(field: FieldName): TemplateResult | typeof nothing {
    return this.live.view?.job.seen[field]?.length ? nothing : html` <span class="second">(${words().settings.starting})</span>`;
  }

  private ofDevice(): TemplateResult {
    const say = words().settings;
    const theme = journal.preference('theme') ?? 'system';
    return html`<asf-section .label=${say.ofDevice} .count=${say.ofDeviceCount}>
      <asf-edit-line .label=${say.who} .value=${whoDecides() ?? ''} .hint=${say.whoHint} key="device/who" .save=${(text: string) => { journal.prefer('who', text.trim()); this.requestUpdate(); return Promise.resolve(''); }}></asf-edit-line></asf-section>
      <div class="settings-choices">
        <asf-choice columns="3" .label=${say.theme} .options=${(['system', 'light', 'dark'] as const).map((value) => ({ value, word: say.themes[value] }))} .value=${theme}
          @asf-change=${(event: CustomEvent<{ value: string }>) => { journal.prefer('theme', event.detail.value === 'system' ? null : event.detail.value); }}></asf-choice>
        <asf-choice columns="2" .label=${say.hand} .options=${(['right', 'left'] as const).map((value) => ({ value, word: say.hands[value] }))} .value=${journal.preference('hand') === 'left' ? 'left' : 'right'}
          @asf-change=${(event: CustomEvent<{ value: string }>) => { journal.prefer('hand', event.detail.value === 'left' ? 'left' : null); }}></asf-choice>
        <p class="second">${say.handHint}</p></div>`;
  }

  private hourText(): string {
    const value = this.live.view?.settings.hour_value;
    return value ? String(value.minor / 10 ** minorDigits(value.currency)) : '';
  }

  private currencies(): (readonly [string, string])[] {
    const now = this.live.view?.settings.currency ?? 'GBP';
    return [...new Set([...CURRENCIES, now])].map((code) => [code, currencySign(code) === code ? code : `${code} (${currencySign(code)})`] as const);
  }

  private readonly hour = async (text: string, record?: RecordView): Promise<string | null> => {
    const say = words().settings;
    const hour_value = readMoney(text, this.live.view?.settings.currency ?? 'GBP');
    return hour_value ? this.put(say.hour, { hour_value }, record) : say.wrongMoney;
  };

  private readonly threshold = async (text: string, record?: RecordView): Promise<string | null> => {
    const say = words().settings;
    const threshold = readMoney(text, this.live.view?.settings.currency ?? 'GBP');
    return threshold ? this.put(say.threshold, { threshold }, record) : say.wrongMoney;
  };

  /** With the currency go the value of an hour, the threshold and the budget: as many of the new one. */
  private async currency(currency: string): Promise<void> {
    const { view } = this.live;
    if (!view) return;
    const inNew = ({ minor }: { minor: number }): { minor: number; currency: string } => ({ minor: Math.round((minor / 10 ** minorDigits(view.settings.currency)) * 10 ** minorDigits(currency)), currency });
    await write(view.job, [{ currency }, { hour_value: inNew(view.settings.hour_value) }, { threshold: inNew(view.settings.threshold) }, ...(view.settings.budget ? [{ budget: inNew(view.settings.budget) }] : [])], words().settings.saved(words().settings.currency));
  }

  private put(label: string, change: Change, record = this.live.view?.job): Promise<string | null> {
    return putDown(record, change, words().settings.saved(label));
  }
}

/** As it is typed: without signs between thousands. */
function plainNumber(value: number): string {
  return String(Number(value.toFixed(2)));
}

declare global { interface HTMLElementTagNameMap { 'asf-place-settings': PlaceSettings } }
