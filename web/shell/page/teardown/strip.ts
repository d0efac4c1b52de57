import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PhotoView } from '../../bridge/protocol';
import { LightElement } from '../kit/light-element';
import '../kit/photo';
import { Pictures } from '../pictures';
import { words } from '../words';
import { isFresh, type Tile } from './tile';

const MOST = 24;

/** The photos of the part in hand, latest first, each with its stamp; beside them how many are safe. */
@customElement('asf-strip')
export class Strip extends LightElement {
  @property({ attribute: false }) photos: readonly PhotoView[] = [];
  @property({ attribute: false }) tiles: readonly Tile[] = [];
  /** What is not saved, of any part: the next tag must not hide it. */
  @property({ attribute: false }) failed: readonly Tile[] = [];
  @property() tag = '';
  /** What is said in place of the photos while there are none. */
  @property() todo = '';

  private readonly pictures = new Pictures(this);

  override render(): TemplateResult {
    const text = words().teardown;
    const kept = this.photos.filter(({ record }) => !record.struck);
    const ids = new Set(this.photos.map(({ record }) => record.id));
    const loose = this.tiles.filter(({ id }) => !ids.has(id));
    // Counted from what the database answered, so that the number never runs ahead of what is safe.
    const safe = kept.length + loose.filter(({ state }) => state === 'kept').length;
    const saving = loose.filter(({ state }) => state === 'saving').length;
    return html`<div class="td-strip">
      <div class="strip" role="group" aria-label=${text.stripName(this.tag)}>
        ${loose.map((tile) => html`<asf-photo .src=${tile.src} .state=${tile.state} ?fresh=${isFresh(tile)} label=${text.photoName(kept.length + 1)}></asf-photo>`)}
        ${[...kept].reverse().slice(0, MOST).map((photo, i) => this.kept(photo, kept.length - i))}
        ${loose.length + kept.length === 0 ? html`<span class="td-none ${this.todo ? 'reckoned' : 'second'}">${this.todo ? html`<b>${this.todo}</b>` : text.noPhotos}</span>` : nothing}
      </div>
      ${this.failed.length > 0
        ? html`<button type="button" class="td-again" @click=${() => { for (const tile of this.failed) tile.again(); }}><b>${text.failed(this.failed.length)}</b><span>${text.tryAgain}</span></button>`
        : loose.length + kept.length === 0 ? nothing : html`<p class="td-count"><b class="figure" data-safe=${safe}>${safe}</b><span>${text.safe}</span>${saving > 0 ? html`<span>${text.saving(saving)}</span>` : nothing}</p>`}
    </div>`;
  }

  private kept({ record }: PhotoView, number: number): TemplateResult {
    const tile = this.tiles.find(({ id }) => id === record.id);
    const src = tile?.src || (record.values.blob ? this.pictures.small(record.values.blob) : '');
    const label = words().teardown.photoName(number);
    return html`<a class="td-photo" href="#/photo/${record.id}" aria-label="${label}, ${words().kit.kept}"><asf-photo .src=${src} state="kept" ?fresh=${isFresh(tile)}></asf-photo></a>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-strip': Strip } }
