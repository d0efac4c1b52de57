import { html, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import '../kit/button';
import '../kit/message';
import { LightElement } from '../kit/light-element';
import { unsavedPhotos } from '../unsaved-photos';
import { words } from '../words';

/** Photos that could not be stored, and the button that tries again. */
@customElement('asf-unsaved')
export class Unsaved extends LightElement {
  override connectedCallback(): void {
    super.connectedCallback();
    unsavedPhotos.addEventListener('unsaved', this.redraw);
  }

  override disconnectedCallback(): void {
    unsavedPhotos.removeEventListener('unsaved', this.redraw);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const text = words().frame;
    const { count, unread } = unsavedPhotos;
    return html`${count === 0 ? nothing : html`<asf-message kind="alert" class="notice" .happened=${text.unsaved.happened(count)} .safe=${text.unsaved.safe(count)}>
        <asf-button word=${text.unsaved.again} icon="rotate" @click=${() => { void unsavedPhotos.again(); }}></asf-button></asf-message>`}
      ${unread === 0 ? nothing : html`<asf-message kind="alert" class="notice" .happened=${text.unsaved.unread(unread)} .todo=${text.unsaved.unreadTodo}>
        <asf-button word=${text.close} icon="close" @click=${() => { unsavedPhotos.forgetUnread(); }}></asf-button></asf-message>`}`;
  }

  private readonly redraw = (): void => { this.requestUpdate(); };
}

declare global { interface HTMLElementTagNameMap { 'asf-unsaved': Unsaved } }
