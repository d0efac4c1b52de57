import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, RecordView, Units } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Once } from '../once';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { readVolume, volumeTyped, volumeUnit, volumeWords } from './volume';

const EMPTY = { name: '', drained: '', condition: '' };
const KEY = 'fluid/new';
type Amount = 'drained' | 'capacity' | 'filled';

/** What was drained and in what state; how much goes in again. At the strip it is put down, at the end filled in. */
@customElement('asf-fluids')
export class Fluids extends LightElement {
  @property({ attribute: false }) fluids: readonly RecordView[] = [];
  @property({ attribute: false }) vehicle: RecordView | undefined;
  @property() units: Units = 'metric';
  @state() private adding = journal.typedBefore(KEY) !== null;
  @state() private draft = formKept(KEY, EMPTY);
  @state() private errors: { name?: string; drained?: string } = {};
  private readonly once = new Once();

  override render(): TemplateResult {
    const say = words().commissioning.fluids;
    const left = this.fluids.filter(({ values }) => values.filled === undefined).length;
    return html`<asf-section .label=${say.title} .count=${this.fluids.length ? (left ? say.refill : '') : say.none}>
      <p class="reckoned">${say.lead} ${say.disposal}</p>
      <ul class="fluids">${this.fluids.map((fluid) => html`<li class="fluid">${this.fluid(fluid)}</li>`)}</ul>
      ${this.adding ? this.form() : html`<asf-button icon="add" word=${say.add} @click=${() => { this.adding = true; }}></asf-button>`}</asf-section>`;
  }

  private fluid(fluid: RecordView): TemplateResult {
    const say = words().commissioning.fluids;
    const { name = '', filled, drained, capacity, text } = fluid.values;
    const amount = capacity ?? drained;
    const state = filled !== undefined ? say.isIn(volumeWords(filled, this.units)) : amount === undefined ? say.unknown : `${say.toFill(volumeWords(amount, this.units))}, ${capacity === undefined ? say.asDrained : say.byManual}`;
    return html`<div role="group" aria-labelledby="fluid-${fluid.id}"><h3 class="fluid-head"><b id="fluid-${fluid.id}">${name}</b><span class="second"><asf-icon name=${filled === undefined ? 'not-proved' : 'proved'} size="20"></asf-icon> ${state}</span></h3>
      ${this.amount(fluid, 'drained', say.drained)}${this.amount(fluid, 'capacity', say.capacity)}${this.amount(fluid, 'filled', say.filled)}
      <asf-edit-line kind="area" .label=${say.condition} .hint=${say.conditionHint} .value=${text ?? ''} .record=${fluid} key="fluid/${fluid.id}/text" .save=${(typed: string, record?: RecordView) => putDown(record, typed.trim() ? { text: typed.trim() } : { clear: 'text' }, say.saved(say.condition))}></asf-edit-line>
      <div class="fluid-ways">${filled === undefined && amount !== undefined ? html`<asf-button compact icon="check" word=${say.now} label=${say.nowOf(name)} @click=${() => { void write(fluid, [{ filled: amount }], say.nowDone(name, volumeWords(amount, this.units))); }}></asf-button>` : nothing}
        <asf-button compact plain icon="strike" word=${say.strike} label="${say.strike}: ${name}" @click=${() => { void strikeOut(fluid, say.struck(name)); }}></asf-button></div></div>`;
  }

  private amount(fluid: RecordView, field: Amount, label: string): TemplateResult {
    const say = words().commissioning.fluids;
    const value = fluid.values[field];
    return html`<asf-edit-line .label=${label} .hint=${say.hint(volumeUnit(this.units))} .value=${value === undefined ? '' : volumeTyped(value, this.units)} .shown=${value === undefined ? '' : volumeWords(value, this.units)} .record=${fluid} key="fluid/${fluid.id}/${field}" .save=${(typed: string, record?: RecordView) => {
      const read = readVolume(typed, this.units);
      if (typed.trim() && read === null) return Promise.resolve(say.wrong);
      return putDown(record, read === null ? { clear: field } : ({ [field]: read } as Change), say.saved(label));
    }}></asf-edit-line>`;
  }

  private form(): TemplateResult {
    const say = words().commissioning.fluids;
    const { draft, errors } = this;
    return html`<form class="place-form" novalidate @submit=${this.put}>
      <asf-field .label=${say.name} .value=${draft.name} .error=${errors.name ?? ''} .suggestions=${say.likely} max="200" @input=${(event: Event) => { this.keep({ name: textOf(event) }); }}></asf-field>
      <asf-field .label=${say.drained} .hint=${say.hint(volumeUnit(this.units))} .value=${draft.drained} .error=${errors.drained ?? ''} max="30" @input=${(event: Event) => { this.keep({ drained: textOf(event) }); }}></asf-field>
      <asf-field kind="area" .label=${say.condition} .hint=${say.conditionHint} .value=${draft.condition} max="5000" @input=${(event: Event) => { this.keep({ condition: textOf(event) }); }}></asf-field>
      <div class="pair"><asf-button kind="submit" icon="check" word=${say.put}></asf-button><asf-button word=${words().kit.close} @click=${this.leave}></asf-button></div></form>`;
  }

  private keep(change: Partial<typeof EMPTY>): void {
    this.draft = { ...this.draft, ...change };
    this.errors = {};
    journal.typing(KEY, JSON.stringify(this.draft));
  }

  private readonly leave = (): void => {
    this.adding = false;
    this.draft = EMPTY;
    journal.typed(KEY);
  };

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().commissioning.fluids;
    const name = this.draft.name.trim();
    const drained = readVolume(this.draft.drained, this.units);
    const unread = this.draft.drained.trim() !== '' && drained === null;
    this.errors = { ...(!name && { name: say.needsName }), ...(unread && { drained: say.wrong }) };
    if (!name || unread) {
      await this.updateComplete;
      await new Promise((soon) => { requestAnimationFrame(soon); });
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const condition = this.draft.condition.trim();
    const { vehicle } = this;
    const changes: Change[] = [{ name }, ...(vehicle ? [{ of: vehicle.id }] : []), ...(drained === null ? [] : [{ drained }]), ...(condition ? [{ text: condition }] : [])];
    await this.once.run('put', undefined, async () => {
      const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'fluid', changes }, say.said(name));
      if (ok) this.leave();
      return ok;
    });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-fluids': Fluids } }
