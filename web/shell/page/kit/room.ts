import { html, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';

const STEPS = [1, 2, 5];

/** How full the storage is: a ruled bar with a mark for each round amount. */
@customElement('asf-room')
export class Room extends LightElement {
  @property({ type: Number }) used = 0;
  @property({ type: Number }) total = 0;
  /** What still fits, in words. */
  @property() more = '';

  override render(): TemplateResult {
    const share = this.total > 0 ? Math.min(1, this.used / this.total) : 0;
    return html`<svg class="room" width="100%" height="38" aria-hidden="true">
      <rect class="bar-open" x="0" y="0" width="100%" height="27" /><rect class="bar-cash" x="0" y="0" width="${share * 100}%" height="27" />
      ${this.marks().map((at, i) => svg`<line class="bar-bracket" x1="${at * 100}%" x2="${at * 100}%" y1="28" y2=${i % 5 === 0 ? 37 : 33} />`)}</svg>
      <p class="room-words"><span>${words().kit.room(this.used, this.total)}</span> <span>${this.more}</span></p>`;
  }

  /** Shares at which a mark stands: at most fifteen of them, at round amounts. */
  private marks(): number[] {
    if (!(this.total > 0)) return [];
    let step = 1;
    for (let i = 0; this.total / step > 15; i += 1) step = (STEPS[i % 3] ?? 1) * 10 ** Math.floor(i / 3);
    return Array.from({ length: Math.floor(this.total / step) + 1 }, (_, i) => (i * step) / this.total);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-room': Room } }
