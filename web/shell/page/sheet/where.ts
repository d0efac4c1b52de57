import { html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PartView } from '../../bridge/protocol';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import '../stores/place-chooser';
import type { PlaceChosen } from '../stores/place-chooser';
import { words } from '../words';
import { write } from './write';

/** Where it lies, from the outermost place, and the way to move it. */
@customElement('asf-sheet-where')
export class SheetWhere extends LightElement {
  @property({ attribute: false }) view?: PartView;
  @state() private moving = false;

  override render(): TemplateResult {
    const say = words().sheet.where;
    const path = this.view?.line.place ?? [];
    const last = path.at(-1);
    return html`<button type="button" class="sheet-link" @click=${() => { this.moving = true; }}>
      <span class="section-label">${say.title}</span>
      <span class="sheet-link-value">${last ? html`${path.slice(0, -1).map((name) => `${name} · `)}<b>${last}</b>` : say.nowhere}</span><asf-icon name="move" size="20"></asf-icon><span class="unseen">${say.move}</span></button>
      <asf-place-chooser .open=${this.moving} none=${say.takeOut} @asf-close=${() => { this.moving = false; }} @asf-place=${this.moved}></asf-place-chooser>`;
  }

  private readonly moved = (event: CustomEvent<PlaceChosen>): void => {
    this.moving = false;
    const { id, name } = event.detail;
    const say = words().sheet.where;
    if (this.view) void write(this.view.record, [id ? { place: id } : { clear: 'place' }], id ? say.moved(name) : say.taken);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-where': SheetWhere } }
