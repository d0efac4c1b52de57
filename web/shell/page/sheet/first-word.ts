import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PartView, Triage } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { write } from './write';

const WORDS: readonly Triage[] = ['looks-good', 'doubtful', 'scrap'];

/** Looks good, doubtful, scrap. */
@customElement('asf-sheet-word')
export class SheetWord extends LightElement {
  @property({ attribute: false }) view?: PartView;

  override render(): TemplateResult {
    const say = words().sheet.word;
    const now = this.view?.record.values.triage;
    return html`<asf-section .label=${say.title} .count=${now ? '' : say.open}>
      <asf-choice hide-label .label=${say.label} .options=${WORDS.map((value) => ({ value, word: say.options[value] }))} .value=${now ?? ''} @asf-change=${this.said}></asf-choice></asf-section>`;
  }

  private readonly said = (event: CustomEvent<{ value: Triage }>): void => {
    const { value } = event.detail;
    if (this.view) void write(this.view.record, [{ triage: value }], words().sheet.word.said(words().sheet.word.options[value]));
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-word': SheetWord } }
