import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Change, PartView, RecordView } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import './edit-line';
import { putDown, write } from './write';

const MARKS = ['single_use', 'cannot_be_bought', 'missing_from_start', 'wrong_piece', 'stuck', 'safety_critical'] as const;
type Mark = (typeof MARKS)[number];

/** What is special about the part; for a stuck one, what was tried. */
@customElement('asf-sheet-marks')
export class SheetMarks extends LightElement {
  @property({ attribute: false }) view?: PartView;

  override render(): TemplateResult | typeof nothing {
    if (!this.view) return nothing;
    const say = words().sheet.marks;
    const { values, id } = this.view.record;
    const set = MARKS.filter((mark) => values[mark]);
    return html`<asf-section .label=${say.title} .count=${set.length ? '' : say.none}>
      <asf-choice many hide-label columns="2" .label=${say.title} .options=${MARKS.map((value) => ({ value, word: say[value] }))} .values=${set} @asf-change=${this.changed}></asf-choice>
      ${values.safety_critical ? html`<p class="reckoned">${say.caution}</p>` : nothing}
      ${values.stuck || values.tried ? html`<asf-edit-line kind="area" .label=${say.tried} .value=${values.tried ?? ''} key="part/${id}/tried" .record=${this.view?.record} .save=${this.tried}></asf-edit-line>` : nothing}
    </asf-section>`;
  }

  private readonly changed = (event: CustomEvent<{ value: Mark; values: readonly string[] }>): void => {
    const say = words().sheet.marks;
    const { value, values } = event.detail;
    const on = values.includes(value);
    if (this.view) void write(this.view.record, [markChange(value, on)], on ? say.set(say[value]) : say.unset(say[value]));
  };

  private readonly tried = (text: string, record?: RecordView): Promise<string | null> => {
    const say = words().sheet;
    return putDown(record, text.trim() ? { tried: text.trim() } : { clear: 'tried' }, say.named.saved(say.marks.tried));
  };
}

function markChange(mark: Mark, on: boolean): Change {
  switch (mark) {
    case 'single_use': return { single_use: on };
    case 'cannot_be_bought': return { cannot_be_bought: on };
    case 'missing_from_start': return { missing_from_start: on };
    case 'wrong_piece': return { wrong_piece: on };
    case 'stuck': return { stuck: on };
    case 'safety_critical': return { safety_critical: on };
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-marks': SheetMarks } }
