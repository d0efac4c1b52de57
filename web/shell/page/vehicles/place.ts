import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, FieldName, RecordView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/choice';
import '../kit/dialog';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import '../sheet/conflict';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import '../styles/sheet.css';
import '../styles/stores.css';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { count } from '../words/format';
import { readNumber } from '../words/read';
import './donor';

/** The vehicle being done, and those that give parts. */
@customElement('asf-place-vehicles')
export class PlaceVehicles extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private adding = false;
  @state() private name = '';
  @state() private wrong = '';
  private readonly live = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().vehicles;
    const vehicles = (this.live.view?.vehicles ?? []).filter(({ struck }) => !struck);
    const donors = vehicles.filter(({ values }) => values.donor);
    const done = vehicles.filter(({ values }) => !values.donor);
    return html`<asf-head .name=${say.title} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body">
        ${this.live.view && done.length === 0 ? html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>` : nothing}
        ${done.map((vehicle) => this.vehicle(vehicle, say.done))}
        ${donors.map((vehicle) => this.vehicle(vehicle, say.newDonor))}
        ${donors.length === 0 ? html`<asf-section .label=${say.donors} .count=${say.noDonor}></asf-section>` : nothing}
        <asf-button icon="gauge" word=${words().gearing.link} href="#/gearing"></asf-button>
        <asf-button icon="add" .word=${done.length === 0 ? say.addVehicle : say.addDonor} @click=${() => { this.adding = true; }}></asf-button>
        <asf-dialog .open=${this.adding} .label=${done.length === 0 ? say.addVehicle : say.addDonor} .body=${this.adding ? this.form(done.length > 0) : nothing} @asf-close=${() => { this.adding = false; }}></asf-dialog>
      </div>`;
  }

  private vehicle(vehicle: RecordView, what: string): TemplateResult {
    const say = words().vehicles;
    const { values } = vehicle;
    const assemblies = (this.live.view?.assemblies ?? []).filter(({ record }) => record.values.vehicle === vehicle.id).length;
    const line = (field: FieldName, label: string, value: string, read: (text: string) => Change | string): TemplateResult => html`<asf-edit-line .label=${label} .value=${value} key="vehicle/${vehicle.id}/${field}" .kind=${field === 'remark' ? 'area' : 'text'} .save=${async (text: string) => {
      const change = text.trim() ? read(text.trim()) : { clear: field };
      return typeof change === 'string' ? change : putDown(vehicle, change, say.saved(label));
    }}></asf-edit-line>`;
    return html`<asf-section .label=${values.name ?? say.noName} .count=${[what, assemblies ? count(assemblies, 'assembly', 'assemblies') : ''].filter(Boolean).join(', ')}>
      ${vehicle.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict}></asf-conflict>`)}
      ${line('name', say.name, values.name ?? '', (name) => ({ name }))}
      ${line('year', say.year, values.year === undefined ? '' : String(values.year), (text) => { const year = readNumber(text); return year !== null && Number.isInteger(year) && year > 1800 && year < 2200 ? { year } : say.wrongYear; })}
      ${line('identity_number', say.identity, values.identity_number ?? '', (identity_number) => ({ identity_number }))}
      ${line('remark', say.remark, values.remark ?? '', (remark) => ({ remark }))}
      ${values.donor ? nothing : html`<asf-choice compact columns="2" .label=${say.painted} .options=${[{ value: 'yes', word: say.isPainted }, { value: '', word: say.notPainted }]} .value=${values.painted ? 'yes' : ''} @asf-change=${(event: CustomEvent<{ value: string }>) => { const painted = event.detail.value === 'yes'; void write(vehicle, [{ painted }], painted ? say.isPainted : say.notPainted); }}></asf-choice><p class="second">${say.paintedHint}</p>`}
      ${values.donor ? html`<asf-donor .vehicle=${vehicle}></asf-donor><asf-button compact plain icon="strike" word=${say.strike} label="${say.strike}: ${values.name ?? say.noName}" @click=${() => { void strikeOut(vehicle, say.struck(values.name ?? say.noName)); }}></asf-button>` : nothing}
    </asf-section>`;
  }

  private form(donor: boolean): TemplateResult {
    const say = words().vehicles;
    return html`<form class="place-form" @submit=${(event: Event) => { event.preventDefault(); void this.add(donor); }}>
      <asf-field .label=${say.name} .value=${this.name} .error=${this.wrong} max="200" @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) { this.name = event.target.value; this.wrong = ''; } }}></asf-field>
      <asf-primary small kind="submit" .verb=${donor ? say.addDonor : say.addVehicle} icon="check"></asf-primary></form>`;
  }

  private async add(donor: boolean): Promise<void> {
    const say = words().vehicles;
    const name = this.name.trim();
    if (!name) {
      this.wrong = say.needsName;
      return;
    }
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'vehicle', changes: [{ name }, { donor }] }, say.made(name));
    if (!ok) return;
    this.name = '';
    this.adding = false;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-vehicles': PlaceVehicles } }
