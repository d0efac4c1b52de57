import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Change, Paint, PartView, RecordView } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { standingWord } from '../parts/tag-figures';
import { words } from '../words';
import { hours } from '../words/format';
import { readHours } from '../words/read';
import './edit-line';
import { putDown, write } from './write';

/** What is said of a part for the day it goes on again: whether the work on it is done, before or after the paint, how long it takes. */
@customElement('asf-sheet-refit')
export class SheetRefit extends LightElement {
  @property({ attribute: false }) view?: PartView;

  override render(): TemplateResult | typeof nothing {
    if (!this.view || this.view.line.standing === 'on') return nothing;
    const say = words().sheet.refit;
    const { record, line } = this.view;
    const { values, id } = record;
    return html`<asf-section .label=${say.title} .count=${standingWord(line)}>
      <asf-choice compact columns="2" .label=${say.finished} .options=${[{ value: 'yes', word: say.isFinished }, { value: '', word: say.notFinished }]} .value=${live(values.finished ? 'yes' : '')} @asf-change=${this.finished}></asf-choice>
      <asf-choice compact columns="3" .label=${say.paint} .options=${(['before', 'after', ''] as const).map((value) => ({ value, word: say.paints[value] }))} .value=${live(values.paint ?? '')} @asf-change=${this.paint}></asf-choice>
      <asf-edit-line kind="hours" .label=${say.time} .hint=${say.timeHint} .value=${values.fit_time === undefined ? '' : hours(values.fit_time)} .record=${record} key="part/${id}/fit_time" .save=${this.time}></asf-edit-line>
      <a class="sheet-link" href=${`#/refit/${line.assembly ?? 'none'}?step=${id}`}><span class="section-label">${say.step}</span><span class="sheet-link-value">${line.assembly_name}</span><asf-icon name="next" size="20"></asf-icon></a></asf-section>`;
  }

  private readonly finished = async (event: CustomEvent<{ value: string }>): Promise<void> => {
    const say = words().sheet.refit;
    const is = event.detail.value === 'yes';
    // What was not stored is not shown as chosen.
    if (this.view && !await write(this.view.record, [{ finished: is }], is ? say.finishedSaid : say.notFinishedSaid)) this.requestUpdate();
  };

  private readonly paint = async (event: CustomEvent<{ value: Paint | '' }>): Promise<void> => {
    const say = words().sheet.refit;
    const { value } = event.detail;
    if (this.view && !await write(this.view.record, [value ? { paint: value } : { clear: 'paint' }], say.paintSaid(say.paints[value]))) this.requestUpdate();
  };

  private readonly time = (text: string, record?: RecordView): Promise<string | null> => {
    const say = words().sheet;
    const minutes = readHours(text);
    if (text.trim() && !minutes) return Promise.resolve(say.refit.wrongTime);
    const change: Change = minutes === null ? { clear: 'fit_time' } : { fit_time: minutes };
    return putDown(record, change, minutes === null ? say.named.cleared(say.refit.time) : say.named.saved(say.refit.time));
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-refit': SheetRefit } }
