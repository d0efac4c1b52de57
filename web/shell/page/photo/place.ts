import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Moment, PhotoView, Shape, Shot } from '../../bridge/protocol';
import { backOf } from '../back-of';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/choice';
import '../kit/empty';
import '../kit/head';
import '../kit/message';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import { standingWord, tagFigures } from '../parts/tag-figures';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import '../styles/photo.css';
import '../styles/sheet.css';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { moment as momentWords } from '../words/format';
import './mark-list';
import { markAt, markOf, WHOLE, type MarkShape } from './mark-shape';
import './placing';
import { reordered } from './reordered';
import './viewer';

const MOMENTS: readonly Moment[] = ['before', 'off', 'after'];
const SHOTS: readonly Shot[] = ['plain', 'index-mark', 'shims', 'tag'];

/** The sheet of one photo. */
@customElement('asf-place-photo')
export class PlacePhoto extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private placing: MarkShape | undefined;
  /** The mark that is moved; a new one when empty. */
  private moves = '';

  private readonly live = new Live(this, 'photo', () => (this.photoId ? { ask: 'photo', photo: this.photoId } : null));
  private readonly whole = new Live(this, 'part', () => (this.of ? { ask: 'part', part: this.of } : null));
  /** Of a place instead of a part. */
  private readonly store = new Live(this, 'place', () => (this.of ? { ask: 'place', place: this.of } : null));
  private readonly keeping = new KeepingWord(this);
  private asked = '';

  private get photoId(): string { return this.address?.id ?? ''; }
  private get of(): string { return this.live.view?.record.values.of ?? ''; }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('address') && this.hasUpdated && this.live.view?.record.id !== this.photoId) {
      this.placing = undefined;
      this.live.anew();
    }
    if (this.of !== this.asked) {
      this.asked = this.of;
      this.whole.anew();
      this.store.anew();
    }
  }

  override render(): TemplateResult {
    const say = words().photo;
    const { view } = this.live;
    if (this.live.nothing) return html`<asf-head .name=${say.title} back="#/parts"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="parts" word=${say.gone.go} href="#/parts"></asf-button></asf-empty></div>`;
    if (!view) return html`<asf-head .name=${say.title} back="#/parts"></asf-head>`;
    return html`${this.head(view)}${this.viewer(view)}<div class="body photo-body">
      ${view.record.struck ? html`<asf-message .happened=${say.isStruck}><asf-button icon="bring" word=${say.bring} @click=${() => { void this.strike(false); }}></asf-button></asf-message>` : nothing}
      ${this.placing ? html`<asf-placing .mark=${this.placing} .aspect=${this.aspect()} @asf-mark=${this.isDrawn} @asf-put=${this.put} @asf-leave=${() => { this.placing = undefined; }}></asf-placing>` : this.tools(view)}
      ${this.placing ? nothing : html`<asf-mark-list .marks=${view.marks} @asf-move=${this.moveMark}></asf-mark-list>
      <asf-section .label=${say.caption}><asf-edit-line kind="area" .label=${say.caption} .value=${view.record.values.caption ?? ''} .shown=${view.record.values.caption ?? html`<span class="second">${say.noCaption}</span>`} key="photo/${this.photoId}/caption" .save=${this.caption}></asf-edit-line></asf-section>
      <asf-section .label=${say.moment}><asf-choice hide-label columns="3" .label=${say.moment} .options=${MOMENTS.map((value) => ({ value, word: words().moments.word[value] }))} .value=${view.record.values.moment ?? 'off'}
        @asf-change=${(event: CustomEvent<{ value: Moment }>) => { void write(view.record, [{ moment: event.detail.value }], say.momentDone(words().moments.word[event.detail.value])); }}></asf-choice></asf-section>
      <asf-section .label=${say.shot}><asf-choice hide-label columns="2" .label=${say.shot} .options=${SHOTS.map((value) => ({ value, word: say.shots[value] }))} .value=${view.record.values.shot ?? 'plain'}
        @asf-change=${(event: CustomEvent<{ value: Shot }>) => { void write(view.record, [{ shot: event.detail.value }], say.shots[event.detail.value]); }}></asf-choice></asf-section>
      ${this.order()}`}
    </div>`;
  }

  private head({ record }: PhotoView): TemplateResult {
    const say = words().photo;
    const line = this.whole.view?.line;
    const [n, all] = this.position();
    const place = this.store.view?.line;
    const back = backOf(this.address, this.of && line ? `#/part/${this.of}` : place ? `#/stores/${this.of}` : '#/parts');
    const tag = line ? html`<asf-tag .number=${tagFigures(line.tag)} .standing=${line.standing} .standingWord=${standingWord(line)} size="40"></asf-tag>` : nothing;
    const taken = record.values.taken === undefined ? '' : momentWords(new Date(record.values.taken));
    return html`<asf-head .name=${line?.name || place?.record.values.name || say.title} .second=${[n ? say.of(n, all) : '', taken].filter(Boolean).join(', ')} back=${back} .tag=${tag} .cells=${[this.keeping.cell]}></asf-head>`;
  }

  private viewer({ record, marks }: PhotoView): TemplateResult {
    const say = words().photo;
    const standing = marks.filter((mark) => !mark.struck && mark.id !== (this.placing ? this.moves : ''));
    const shapes = [...standing.map(markOf), ...(this.placing ? [this.placing] : [])];
    const viewer = this.querySelector('asf-viewer');
    const missing = viewer?.picture.missing ?? false;
    return html`<asf-viewer .hash=${record.values.blob ?? ''} .marks=${shapes} .live=${this.placing ? shapes.length - 1 : -1} .drawing=${this.placing?.shape ?? ''} label=${[record.values.caption ?? this.whole.view?.line.name ?? say.title, say.describe(standing.length)].filter(Boolean).join(', ')} @asf-drawn=${this.isDrawn}></asf-viewer>
      ${missing ? html`<asf-message kind="alert" .happened=${say.missing.happened} .safe=${say.missing.safe} .todo=${say.missing.todo}><asf-button icon="bring" word=${words().problems.go.bring} href="#/hand-over"></asf-button></asf-message>` : nothing}`;
  }

  private tools({ record }: PhotoView): TemplateResult {
    const say = words().photo;
    return html`<div class="pair">
      <asf-button icon="ring" word=${say.ring} @click=${() => { this.start('ring'); }}></asf-button>
      <asf-button icon="arrow" word=${say.arrow} @click=${() => { this.start('arrow'); }}></asf-button>
      ${record.struck ? nothing : html`<asf-button icon="strike" word=${say.strike} @click=${() => { void this.strike(true); }}></asf-button>`}</div>`;
  }

  private order(): TemplateResult | typeof nothing {
    const say = words().photo;
    const photos = this.siblings();
    const at = photos.findIndex(({ record }) => record.id === this.photoId);
    if (at < 0 || photos.length < 2) return nothing;
    const [before, after] = [photos[at - 1], photos[at + 1]];
    return html`<asf-section .label=${say.order} .count=${say.of(at + 1, photos.length)}><div class="pair">
        <asf-button icon="back" word=${say.previous} ?disabled=${!before} @click=${() => { this.turn(before); }}></asf-button>
        <asf-button icon="next" word=${say.next} ?disabled=${!after} @click=${() => { this.turn(after); }}></asf-button>
        <asf-button word=${say.earlier} ?disabled=${!before} @click=${() => { void this.reorder(at, at - 1); }}></asf-button>
        <asf-button word=${say.later} ?disabled=${!after} @click=${() => { void this.reorder(at, at + 1); }}></asf-button></div></asf-section>`;
  }

  /** Another photo, with the same way back. */
  private turn(to: PhotoView | undefined): void {
    const search = this.address?.search.toString();
    if (to) location.hash = `#/photo/${to.record.id}${search ? `?${search}` : ''}`;
  }

  private siblings(): PhotoView[] {
    return (this.whole.view?.photos ?? []).filter(({ record }) => !record.struck);
  }

  private position(): readonly [number, number] {
    const photos = this.siblings();
    return [photos.findIndex(({ record }) => record.id === this.photoId) + 1, photos.length];
  }

  private aspect(): number {
    return this.querySelector('asf-viewer')?.aspect ?? 4 / 3;
  }

  // ---- marks ----

  private start(shape: Shape): void {
    this.moves = '';
    this.placing = markAt(shape, WHOLE / 2, WHOLE / 2, this.aspect());
    scrollTo({ top: 0 });
  }

  private readonly moveMark = (event: CustomEvent<{ id: string }>): void => {
    const mark = this.live.view?.marks.find(({ id }) => id === event.detail.id);
    if (!mark) return;
    this.moves = mark.id;
    this.placing = markOf(mark);
    scrollTo({ top: 0 });
  };

  private readonly isDrawn = (event: CustomEvent<MarkShape>): void => { this.placing = event.detail; };

  private readonly put = async (): Promise<void> => {
    const say = words().photo;
    const { placing: mark, moves } = this;
    const { view } = this.live;
    if (!mark || !view) return;
    const { shape, x, y, dx, dy } = mark;
    const where: Change[] = [{ x }, { y }, { dx }, { dy }];
    const { ok } = moves
      ? await carryOut({ do: 'change', ids: [moves], changes: where }, say.movedMark)
      : await carryOut({ do: 'create', id: newId(), kind: 'mark', changes: [{ of: this.photoId }, { shape }, ...where, { order: view.marks.length + 1 }] }, say.putDone(shape === 'ring' ? say.ring : say.arrow));
    if (ok) this.placing = undefined;
  };

  // ---- the photo itself ----

  private readonly caption = (text: string): Promise<string | null> =>
    putDown(this.live.view?.record, text.trim() ? { caption: text.trim() } : { clear: 'caption' }, words().photo.captionDone);

  private async reorder(from: number, to: number): Promise<void> {
    await carryOut({ do: 'all', commands: reordered(this.siblings().map(({ record }) => record), from, to) }, words().photo.ordered);
  }

  private async strike(struck: boolean): Promise<void> {
    const record = this.live.view?.record;
    if (record) await strikeOut(record, struck ? words().photo.struck : words().photo.brought, struck);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-photo': PlacePhoto } }
