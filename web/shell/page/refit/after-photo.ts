import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import { CAMERA, readPicture } from '../camera/pictures-in';
import { Viewfinder, type Shot } from '../camera/viewfinder';
import '../kit/button';
import '../kit/dialog';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import '../styles/teardown.css';
import '../teardown/sight';
import type { Sight } from '../teardown/sight';
import { unsavedPhotos } from '../unsaved-photos';
import { words } from '../words';

/** A new photo of the part as it sits now, with the camera of the app; without one from a file. */
@customElement('asf-after-photo')
export class AfterPhoto extends LightElement {
  @property() partId = '';
  /** The place of the last photo in their order. */
  @property({ type: Number }) last = 0;
  @state() private open = false;
  private readonly finder = new Viewfinder();
  /** A picture that the camera still owes: it stays on until that has come. */
  private owed: Promise<unknown> | null = null;

  override disconnectedCallback(): void {
    this.finder.close();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().refit.onStep;
    return html`<asf-button icon="camera" word=${say.newPhoto} @click=${this.aim}></asf-button>
      <asf-dialog .open=${this.open} .label=${say.newPhoto} .body=${this.open ? html`<asf-sight class="bf-sight" .finder=${this.finder} @asf-shoot=${this.shoot}></asf-sight>` : nothing}
        .actions=${html`<asf-primary verb=${say.shoot} icon="camera" @click=${this.shoot}></asf-primary>`} @asf-close=${this.leave}></asf-dialog>
      <input class="rf-file" hidden type="file" accept=${CAMERA} capture="environment" @change=${this.chosen}>`;
  }

  private readonly aim = (): void => {
    this.open = true;
    this.finder.open();
  };

  private readonly leave = (): void => {
    this.open = false;
    if (!this.owed) this.finder.close();
  };

  private readonly shoot = (): void => {
    const { sight } = this.finder;
    if (sight === 'refused' || sight === 'none') { this.querySelector<HTMLInputElement>('.rf-file')?.click(); return; }
    const shot = this.finder.shoot();
    if (!shot) { void this.finder.start(); return; }
    this.querySelector<Sight>('asf-sight')?.blink();
    const owed = shot.bytes.then(() => undefined, () => undefined);
    this.owed = owed;
    void owed.then(() => {
      if (this.owed !== owed) return;
      this.owed = null;
      if (!this.open) this.finder.close();
    });
    this.record(shot.bytes);
  };

  private readonly chosen = (event: Event): void => {
    if (!(event.target instanceof HTMLInputElement)) return;
    for (const file of event.target.files ?? []) this.record(readPicture(file));
    event.target.value = '';
  };

  private record(picture: Shot['bytes']): void {
    const { partId: of, last } = this;
    const taken = Date.now();
    this.leave();
    void unsavedPhotos.save(picture, ({ bytes, media_type }) => ({ do: 'create', id: newId(), kind: 'photo', changes: [
      { of }, { moment: 'after' }, { shot: 'plain' }, { taken }, { order: last + 1 }, { blob: '$0' }, { length: bytes.byteLength }, { media_type }] }), words().refit.onStep.photoDone);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-after-photo': AfterPhoto } }
