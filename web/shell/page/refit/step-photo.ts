import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { BesidePhoto, PhotoView, RefitStepView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import '../photo/framed';
import { Pictures } from '../pictures';
import { tagInHand } from '../parts/tag-in-hand';
import { words } from '../words';

/** One picture of the row: the part's own, or of the side that is kept whole. */
interface Shown { photo: PhotoView; of: string }

/** The photos of a step, one large with the tag laid on it: before, off, after, then the other side. The next one by a button. */
@customElement('asf-step-photo')
export class StepPhoto extends LightElement {
  @property({ attribute: false }) view!: RefitStepView;
  /** Where the step stands, for the way back to it. */
  @property() here = '';
  @state() private at = 0;
  private readonly pictures = new Pictures(this);

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (changed.has('view') && before?.record.id !== this.view.record.id) this.at = 0;
    this.at = Math.max(0, Math.min(this.at, this.all.length - 1));
  }

  override render(): TemplateResult {
    const say = words().refit.onStep;
    const { all } = this;
    const shown = all[this.at];
    return html`<div class="rf-photo ${this.view.joints.length ? 'rf-photo-low' : ''}">${shown ? this.large(shown) : html`<p class="rf-nophoto second">${say.noPhoto}</p>`}
        <span class="rf-tag">${tagInHand(this.view.step.line, 64)}</span>
        ${all.length > 1 ? html`<button type="button" class="rf-turn rf-turn-back" aria-label=${say.previousPhoto} aria-keyshortcuts="ArrowLeft" @click=${() => { this.turn(-1); }}><asf-icon name="back"></asf-icon></button>
          <button type="button" class="rf-turn rf-turn-on" aria-label=${say.nextPhoto} aria-keyshortcuts="ArrowRight" @click=${() => { this.turn(1); }}><asf-icon name="next"></asf-icon></button>` : nothing}</div>
      ${this.strip()}`;
  }

  /** To the photo before or after; round at the ends. */
  turn(by: number): void {
    const { length } = this.all;
    if (length > 0) this.at = (this.at + by + length) % length;
  }

  private get all(): Shown[] {
    const own = this.view.photos.map((photo) => ({ photo, of: '' }));
    return [...own, ...this.view.beside.map(({ photo, of }) => ({ photo, of }))];
  }

  private large({ photo: { record, marks }, of }: Shown): TemplateResult {
    const say = words().refit.onStep;
    const { all, at } = this;
    const moment = of ? say.beside(of) : words().moments.word[record.values.moment ?? 'off'];
    return html`<a class="sheet-photo rf-large" href=${openedFrom(`#/photo/${record.id}`, this.here)}>
      <asf-framed whole .hash=${record.values.blob ?? ''} .marks=${marks.filter(({ struck }) => !struck)} label=${record.values.caption ?? say.openPhoto}></asf-framed>
      <span class="plate">${say.photo(moment, at + 1, all.length)}${record.values.caption ? html`<br>${record.values.caption}` : nothing}</span></a>`;
  }

  /** The other side has a row of its own: it is looked at beside the work, again and again. */
  private strip(): TemplateResult | typeof nothing {
    const say = words().refit.onStep;
    const { beside, photos } = this.view;
    if (beside.length === 0) return nothing;
    return html`<div class="rf-beside"><span class="second">${say.reference}</span><span class="rf-beside-row">${beside.map((one: BesidePhoto, i) => html`<asf-photo opens .src=${one.photo.record.values.blob ? this.pictures.small(one.photo.record.values.blob) : ''} label=${say.beside(one.of)} ?current=${this.at === photos.length + i}
      @click=${() => { this.at = photos.length + i; }}></asf-photo>`)}</span></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-step-photo': StepPhoto } }
