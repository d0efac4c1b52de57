import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Change, FieldName, PartView, RecordView, Side } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import { words } from '../words';
import './edit-line';
import './stamped';
import { areaInUnit, areaText, areaUnit } from './area';
import { massInUnit, massText, massUnit } from './mass';
import { putDown } from './write';
import { readNumber, readStage } from '../words/read';

type TextField = 'name' | 'makers_number' | 'casting_number' | 'material' | 'remark';

/** Name, numbers, material, mass, side, assembly. */
@customElement('asf-sheet-named')
export class SheetNamed extends LightElement {
  @property({ attribute: false }) view?: PartView;
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly assemblies = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));

  override render(): TemplateResult | typeof nothing {
    if (!this.view) return nothing;
    const say = words().sheet.named;
    const { values } = this.view.record;
    return html`<asf-section .label=${say.title}>
      ${this.text('name', say.name)}
      ${this.figure('quantity', say.quantity, String(values.quantity ?? 1), '', (text) => whole(text, (quantity) => ({ quantity })))}
      ${this.text('makers_number', say.makers_number)}<asf-stamped .text=${values.makers_number ?? values.name ?? ''}></asf-stamped>${this.text('casting_number', say.casting_number)}${this.text('material', say.material)}
      ${this.mass()}${this.area()}
      ${this.text('remark', words().sheet.notes.remark)}
      ${this.stage()}
      ${this.figure('tag', say.tag, values.tag === undefined ? '' : String(values.tag), '', (text) => whole(text, (tag) => ({ tag })))}
      <div class="sheet-picks">${this.assembly()}${this.side()}</div></asf-section>`;
  }

  private text(field: TextField, label: string): TemplateResult {
    const value = this.view?.record.values[field] ?? '';
    return html`<asf-edit-line .label=${label} .value=${value} key=${this.journalKey(field)} .kind=${field === 'remark' ? 'area' : 'text'}
      .record=${this.view?.record} .save=${(text: string, record?: RecordView) => this.put(label, text.trim() ? textChange(field, text.trim()) : { clear: field }, record)}></asf-edit-line>`;
  }

  private figure(field: FieldName, label: string, value: string, unit: string, read: (text: string) => Change | string, hint = ''): TemplateResult {
    return html`<asf-edit-line .label=${label} .value=${value} .shown=${value && unit ? `${value}\u00a0${unit}` : value} kind="number" .unit=${unit} .hint=${hint} key=${this.journalKey(field)} .record=${this.view?.record} .save=${(text: string, record?: RecordView) => {
      if (!text.trim()) return this.put(label, { clear: field }, record);
      const change = read(text);
      return typeof change === 'string' ? Promise.resolve(change) : this.put(label, change, record);
    }}></asf-edit-line>`;
  }

  private mass(): TemplateResult {
    const say = words().sheet.named;
    const units = this.head.view?.settings.units ?? 'metric';
    const grams = this.view?.record.values.mass;
    return this.figure('mass', say.mass, grams === undefined ? '' : massText(grams, units), massUnit(units), (text) => {
      const figure = readNumber(text);
      return figure === null || figure < 0 ? say.notANumber : { mass: massInUnit(figure, units) };
    });
  }

  private area(): TemplateResult {
    const say = words().sheet.named;
    const units = this.head.view?.settings.units ?? 'metric';
    const area = this.view?.record.values.area;
    return this.figure('area', say.area, area === undefined ? '' : areaText(area, units), areaUnit(units), (text) => {
      const figure = readNumber(text);
      return figure === null || figure < 0 ? say.notANumber : { area: areaInUnit(figure, units) };
    }, say.areaHint);
  }

  private stage(): TemplateResult {
    const say = words().sheet.named;
    const { stage } = this.view?.record.values ?? {};
    return this.figure('stage', say.stage, stage === undefined ? '' : String(stage), '', (text) => {
      const read = readStage(text);
      return read === null ? say.wrongStage : { stage: read };
    }, say.stageHint);
  }

  private assembly(): TemplateResult {
    const say = words().sheet.named;
    const lines = this.assemblies.view?.assemblies ?? [];
    const options = [['', say.noAssembly] as const, ...lines.map(({ record, depth }) => [record.id, `${'\u2003'.repeat(depth)}${record.values.name ?? words().parts.noName}`] as const)];
    return html`<asf-pick .label=${say.assembly} .options=${options} .value=${this.view?.record.values.assembly ?? ''}
      @asf-change=${(event: CustomEvent<{ value: string }>) => { void this.put(say.assembly, event.detail.value ? { assembly: event.detail.value } : { clear: 'assembly' }); }}></asf-pick>`;
  }

  private side(): TemplateResult {
    const say = words().sheet.named;
    const options = (['', 'left', 'right'] as const).map((value) => ({ value, word: say.sideOptions[value] }));
    return html`<asf-choice compact columns="3" .label=${say.side} .options=${options} .value=${this.view?.record.values.side ?? ''}
      @asf-change=${(event: CustomEvent<{ value: Side | '' }>) => { void this.put(say.side, event.detail.value ? { side: event.detail.value } : { clear: 'side' }); }}></asf-choice>`;
  }

  private put(label: string, change: Change, record = this.view?.record): Promise<string | null> {
    const say = words().sheet.named;
    return putDown(record, change, 'clear' in change ? say.cleared(label) : say.saved(label));
  }

  private journalKey(field: string): string {
    return `part/${this.view?.record.id ?? ''}/${field}`;
  }
}

function textChange(field: TextField, text: string): Change {
  switch (field) {
    case 'name': return { name: text };
    case 'makers_number': return { makers_number: text };
    case 'casting_number': return { casting_number: text };
    case 'material': return { material: text };
    case 'remark': return { remark: text };
  }
}

function whole(text: string, change: (value: number) => Change): Change | string {
  const figure = readNumber(text);
  return figure === null || !Number.isInteger(figure) || figure < 1 ? words().sheet.named.wholeNumber : change(figure);
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-named': SheetNamed } }
