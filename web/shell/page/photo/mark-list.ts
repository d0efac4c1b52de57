import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { RecordView } from '../../bridge/protocol';
import '../kit/button';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { strikeOut } from '../strike-out';
import { words } from '../words';

/** The marks of a photo, to be moved or struck out. Tells `asf-move`. */
@customElement('asf-mark-list')
export class MarkList extends LightElement {
  @property({ attribute: false }) marks: readonly RecordView[] = [];

  override render(): TemplateResult {
    const say = words().photo;
    const standing = this.marks.filter(({ struck }) => !struck);
    return html`<asf-section .label=${say.marks} .count=${standing.length ? '' : say.none}><ul class="mark-list">${standing.map((mark, i) => {
      const name = say.mark(i + 1, mark.values.shape === 'arrow' ? say.arrowWord : say.ringWord);
      return html`<li><span>${name}</span>
        <asf-button compact word=${say.moveMark} label="${say.moveMark}: ${name}" @click=${() => { this.tell('asf-move', { id: mark.id }); }}></asf-button>
        <asf-button compact word=${say.strikeMark} label="${say.strikeMark}: ${name}" @click=${() => { void strikeOut(mark, say.struckMark); }}></asf-button></li>`;
    })}</ul></asf-section>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-mark-list': MarkList } }
