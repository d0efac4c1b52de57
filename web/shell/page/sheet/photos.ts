import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { PartView, PhotoView } from '../../bridge/protocol';
import { readPicture } from '../camera/pictures-in';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import '../photo/framed';
import { Pictures } from '../pictures';
import { unsavedPhotos } from '../unsaved-photos';
import { words } from '../words';

/** The photos of a part: one large to the edges, with its marks; the others as a strip. */
@customElement('asf-sheet-photos')
export class SheetPhotos extends LightElement {
  @property({ attribute: false }) view?: PartView;
  @state() private at = 0;
  private readonly pictures = new Pictures(this);

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (changed.has('view') && before?.record.id !== this.view?.record.id) this.at = 0;
    this.at = Math.max(0, Math.min(this.at, this.photos.length - 1));
  }

  override render(): TemplateResult {
    const say = words().sheet.photos;
    const photo = this.photos[this.at];
    return html`${photo ? this.large(photo) : html`<p class="sheet-nophoto second">${say.none}</p>`}
      <div class="sheet-strip">${this.photos.length > 1 ? this.photos.map((one, i) => this.small(one, i)) : nothing}
        <label class="sheet-add"><input class="unseen" type="file" accept="image/*" multiple @change=${this.add}><asf-icon name="add"></asf-icon><span>${say.add}</span></label></div>`;
  }

  private get photos(): PhotoView[] {
    return (this.view?.photos ?? []).filter(({ record }) => !record.struck);
  }

  private large({ record, marks }: PhotoView): TemplateResult {
    const say = words().sheet.photos;
    const when = words().moments.word[record.values.moment ?? 'off'];
    return html`<a class="sheet-photo" href=${`#/photo/${record.id}`}>
      <asf-framed .hash=${record.values.blob ?? ''} .marks=${marks.filter(({ struck }) => !struck)} label=${record.values.caption ?? say.open(this.at + 1)}></asf-framed>
      <span class="plate">${say.of(when, this.at + 1, this.photos.length)}</span></a>`;
  }

  private small({ record }: PhotoView, index: number): TemplateResult {
    return html`<asf-photo opens .src=${record.values.blob ? this.pictures.small(record.values.blob) : ''} label=${words().sheet.photos.open(index + 1)} ?current=${index === this.at}
      @click=${() => { this.at = index; }}></asf-photo>`;
  }

  private readonly add = async (event: Event): Promise<void> => {
    if (!(event.target instanceof HTMLInputElement) || !this.view) return;
    const files = [...(event.target.files ?? [])];
    event.target.value = '';
    const part = this.view.record.id;
    const after = Math.max(0, ...this.view.photos.map(({ record }) => record.values.order ?? 0));
    // All are read at once: a file from the camera may vanish under a lazy reader.
    await Promise.all(files.map((file, i) => unsavedPhotos.save(readPicture(file), ({ bytes, media_type }) => ({ do: 'create', id: newId(), kind: 'photo', changes: [
      { of: part }, { blob: '$0' }, { length: bytes.byteLength }, { media_type }, { moment: 'off' }, { shot: 'plain' }, { taken: file.lastModified || Date.now() }, { order: after + i + 1 },
    ] }), words().sheet.photos.added(1))));
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-photos': SheetPhotos } }
