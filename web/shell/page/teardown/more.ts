import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Shot, Side, Values } from '../../bridge/protocol';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { say } from '../say';
import { words } from '../words';
import type { Bench } from './bench';
import { tagNumber } from './tag-number';

const MARKS = ['single_use', 'cannot_be_bought', 'missing_from_start', 'wrong_piece', 'from_boxes'] as const;
type Mark = (typeof MARKS)[number];
const SHOTS: readonly Shot[] = ['plain', 'index-mark', 'shims', 'tag'];
const SERIES = [3, 5, 10];

/** A mark as a change; written out because each is a member of its own. */
function marking(mark: Mark, on: boolean): Change {
  switch (mark) {
    case 'single_use': return { single_use: on };
    case 'cannot_be_bought': return { cannot_be_bought: on };
    case 'missing_from_start': return { missing_from_start: on };
    case 'wrong_piece': return { wrong_piece: on };
    case 'from_boxes': return { from_boxes: on };
  }
}

const nameKey = ({ part }: Bench): string => `name:${part ?? ''}`;
const placeKey = ({ part }: Bench): string => `place:${part ?? ''}`;

/** Something was being typed here when the page ended. */
export function wasTyping(bench: Bench): boolean {
  return journal.typedBefore(nameKey(bench)) !== null || journal.typedBefore(placeKey(bench)) !== null;
}

/** What can be said of the part in hand, none of which is needed. Tells `asf-camera`, `asf-files` and `asf-series`. */
@customElement('asf-more')
export class More extends LightElement {
  @property({ attribute: false }) bench!: Bench;
  @state() private placeName = '';

  override connectedCallback(): void {
    super.connectedCallback();
    this.bench.addEventListener('bench', this.changed);
  }

  override disconnectedCallback(): void {
    this.bench.removeEventListener('bench', this.changed);
    super.disconnectedCallback();
  }

  /** For whoever wants to type at once. */
  async focusName(): Promise<void> {
    await this.updateComplete;
    const field = this.querySelector('asf-field');
    await field?.updateComplete;
    field?.focus();
  }

  override render(): TemplateResult {
    return html`<div class="td-more">${this.name()}${this.shots()}${this.marks()}${this.quantity()}${this.joint()}${this.places()}${this.side()}${this.ways()}${this.undo()}</div>`;
  }

  private get values(): Values {
    return this.bench.isRecorded ? this.bench.view?.part?.record.values ?? {} : {};
  }

  private get text(): ReturnType<typeof words>['teardown']['more_'] {
    return words().teardown.more_;
  }

  private shots(): TemplateResult {
    return html`<asf-choice .label=${this.text.kind} columns="2" .value=${this.bench.shotKind}
      .options=${SHOTS.map((value) => ({ value, word: this.text.kindWord[value] }))}
      @asf-change=${(event: CustomEvent<{ value: Shot }>) => { this.bench.shotKind = event.detail.value; this.bench.dispatchEvent(new Event('bench')); }}></asf-choice>`;
  }

  private name(): TemplateResult {
    const key = nameKey(this.bench);
    const names = this.bench.view?.names ?? [];
    return html`<asf-field label=${this.text.name} hint=${this.text.nameHint} .value=${journal.typedBefore(key) ?? this.values.name ?? ''} .suggestions=${names}
      @input=${(event: Event) => { journal.typing(key, textOf(event)); }}
      @change=${(event: Event) => { this.write(key, { name: textOf(event).trim() }); }}></asf-field>`;
  }

  private marks(): TemplateResult {
    const set = MARKS.filter((mark) => this.values[mark] === true);
    return html`<asf-choice many .label=${this.text.marks} columns="2" .values=${set} .options=${MARKS.map((value) => ({ value, word: this.text.mark[value] }))}
      @asf-change=${(event: CustomEvent<{ value: Mark; values: string[] }>) => { this.bench.write([marking(event.detail.value, event.detail.values.includes(event.detail.value))]); }}></asf-choice>`;
  }

  private quantity(): TemplateResult {
    const count = this.values.quantity ?? 1;
    return html`<div role="group" aria-label=${this.text.quantity}><p class="choice-label">${this.text.quantity}</p><div class="td-step">
      <asf-button word="−" label=${this.text.fewer} ?disabled=${count <= 1} @click=${() => { if (count > 1) this.bench.write([{ quantity: count - 1 }]); }}></asf-button>
      <output class="figure">${count}</output>
      <asf-button word="+" label=${this.text.another} @click=${() => { this.bench.write([{ quantity: count + 1 }]); }}></asf-button></div></div>`;
  }

  private joint(): TemplateResult | typeof nothing {
    const joint = this.bench.jointInHand;
    if (!joint) return nothing;
    const next = this.bench.nextJointName;
    return html`<asf-section .label=${this.text.joint} .count=${words().teardown.joint(joint.name)}>
      <asf-button icon="next" word=${this.text.nextJoint(joint.name, next)} @click=${() => { this.bench.closeJoint(); say(words().teardown.jointBegun(joint.name, next)); }}></asf-button></asf-section>`;
  }

  private places(): TemplateResult {
    const places = this.bench.view?.places ?? [];
    const key = placeKey(this.bench);
    return html`${places.length > 0 ? html`<asf-choice .label=${this.text.place} columns="2" .value=${this.values.place ?? ''}
      .options=${places.slice(0, 6).map(({ record, path }) => ({ value: record.id, word: record.values.name ?? '', second: path.slice(0, -1).join(', ') }))}
      @asf-change=${(event: CustomEvent<{ value: string }>) => { this.bench.write([{ place: event.detail.value }]); }}></asf-choice>` : nothing}
      <asf-field label=${places.length > 0 ? this.text.placeNew : this.text.place} hint=${this.text.placeHint} .value=${journal.typedBefore(key) ?? this.placeName}
        @input=${(event: Event) => { this.placeName = textOf(event); journal.typing(key, this.placeName); }}
        @change=${() => { this.newPlace(key); }}></asf-field>`;
  }

  private side(): TemplateResult {
    const sides = ['left', 'right', ''] as const;
    return html`<asf-choice .label=${this.text.side} columns="3" .value=${this.values.side ?? ''} .options=${sides.map((value) => ({ value, word: this.text.sideOf[value] }))}
      @asf-change=${(event: CustomEvent<{ value: Side | '' }>) => { this.bench.write([event.detail.value === '' ? { clear: 'side' } : { side: event.detail.value }]); }}></asf-choice>`;
  }

  private ways(): TemplateResult {
    const busy = this.bench.queue.depth > 0;
    return html`<asf-section .label=${this.text.ways} .count=${busy ? this.text.waitSaving : ''}>
      <div class="pair"><asf-button icon="camera" word=${this.text.phoneCamera} ?disabled=${busy} @click=${() => { if (!busy) this.tell('asf-camera', null); }}></asf-button>
      <asf-button icon="photo" word=${this.text.files} @click=${() => { this.tell('asf-files', null); }}></asf-button>
      ${SERIES.map((every) => html`<asf-button icon="timer" word=${this.text.series(every)} @click=${() => { this.tell('asf-series', { every }); }}></asf-button>`)}
      ${this.bench.isRecorded ? html`<asf-button icon="parts" word=${this.text.sheet} href="#/part/${this.bench.part ?? ''}"></asf-button>` : nothing}
      <asf-button icon="printer" word=${this.text.tags} href="#/tags-sheet?from=teardown"></asf-button></div></asf-section>`;
  }

  private undo(): TemplateResult | typeof nothing {
    const step = this.bench.lastStep;
    if (!step) return nothing;
    const undo = async (): Promise<void> => { say(await this.bench.undo() ? words().frame.undone : words().frame.undoFailed); };
    return html`<asf-button icon="undo" word=${this.text.undo[step.what]} @click=${undo}></asf-button>`;
  }

  private write(key: string, change: Change): void {
    this.bench.write([change], ({ ok }) => { if (ok) journal.typed(key); });
    if ('name' in change && change.name) say(words().teardown.named(tagNumber(this.bench.tag), change.name));
  }

  // One command makes the place and lays the part there.
  private newPlace(key: string): void {
    const name = (journal.typedBefore(key) ?? this.placeName).trim();
    const { part } = this.bench;
    if (!name || !part) return;
    const id = newId();
    this.placeName = '';
    this.bench.put(part, () => [{ do: 'create', id, kind: 'place', changes: [{ name }] }, { do: 'change', ids: [part], changes: [{ place: id }] }],
      ({ ok }) => { if (ok) journal.typed(key); });
  }

  private readonly changed = (): void => { this.requestUpdate(); };
}

declare global { interface HTMLElementTagNameMap { 'asf-more': More } }
