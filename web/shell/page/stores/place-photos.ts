import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { PlaceView } from '../../bridge/protocol';
import { readPicture } from '../camera/pictures-in';
import '../kit/icon';
import '../kit/photo';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Pictures } from '../pictures';
import { unsavedPhotos } from '../unsaved-photos';
import { words } from '../words';
import { nameOf } from './place-chooser';

/** Photos of a place: by them it is found months later. */
@customElement('asf-place-photos')
export class PlacePhotos extends LightElement {
  @property({ attribute: false }) view?: PlaceView;
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const say = words().stores;
    const photos = view.photos.filter(({ record }) => !record.struck);
    return html`<asf-section .label=${say.photo} .count=${photos.length ? String(photos.length) : ''}><div class="store-photos">
      ${photos.map(({ record }) => html`<a class="store-photo" href=${`#/photo/${record.id}`}><asf-photo .src=${record.values.blob ? this.pictures.small(record.values.blob) : ''} label=${say.photoOf(nameOf(view.line))}></asf-photo></a>`)}
      <label class="second-button second-button-column store-add"><input class="unseen" type="file" accept="image/*" capture="environment" @change=${this.add}><asf-icon name="camera"></asf-icon><span>${say.addPhoto}</span></label></div></asf-section>`;
  }

  private readonly add = async (event: Event): Promise<void> => {
    if (!(event.target instanceof HTMLInputElement) || !this.view) return;
    const files = [...(event.target.files ?? [])];
    event.target.value = '';
    const of = this.view.line.record.id;
    const after = Math.max(0, ...this.view.photos.map(({ record }) => record.values.order ?? 0));
    await Promise.all(files.map((file, i) => unsavedPhotos.save(readPicture(file), ({ bytes, media_type }) => ({ do: 'create', id: newId(), kind: 'photo', changes: [
      { of }, { blob: '$0' }, { length: bytes.byteLength }, { media_type }, { moment: 'off' }, { shot: 'plain' }, { taken: file.lastModified || Date.now() }, { order: after + i + 1 },
    ] }), words().stores.photoAdded)));
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-photos': PlacePhotos } }
