import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { EveningItem } from '../../bridge/protocol';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';
import { today } from '../today';
import { words } from '../words';
import { hours } from '../words/format';
import { readHours } from '../words/read';

const KEY = 'evening-hours';
const USUAL = 120;

/** More than an evening holds stands behind a button. */
const SHOWN = 8;

/** What can be done with the hours at hand: a list, and how much of it fits. */
@customElement('asf-evening')
export class Evening extends LightElement {
  /** As it was said last on this device. */
  @state() private minutes = Number(journal.preference(KEY) ?? USUAL) || USUAL;
  @state() private wrong = '';
  @state() private all = false;
  private readonly live = new Live(this, 'this-evening', () => ({ ask: 'this-evening', minutes: this.minutes, today: today() }));

  override render(): TemplateResult {
    const say = words().refit.evening;
    const { view } = this.live;
    const isChip = say.chips.some(([value]) => Number(value) === this.minutes);
    return html`<asf-section .label=${say.title}>
      <asf-choice compact .label=${say.label} .options=${say.chips.map(([value, word]) => ({ value, word }))} .value=${isChip ? String(this.minutes) : ''} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.take(Number(event.detail.value)); }}></asf-choice>
      <asf-field kind="hours" .label=${say.other} .hint=${say.otherHint} .error=${this.wrong} .value=${isChip ? '' : hours(this.minutes)} max="12" @input=${() => { this.wrong = ''; }} @change=${this.typed}></asf-field>
      ${view ? html`<p class="reckoned" role="status">${view.items.length === 0 ? say.none : view.picked > 0 ? say.picked(hours(view.picked), hours(view.minutes)) : say.pickedNone(hours(view.minutes))}</p>
        <ul class="rf-evening">${view.items.slice(0, this.all ? undefined : SHOWN).map((item) => html`<li>${this.item(item)}</li>`)}</ul>
        ${view.items.length > SHOWN && !this.all ? html`<asf-button compact plain icon="list" word=${say.more(view.items.length - SHOWN)} @click=${() => { this.all = true; }}></asf-button>` : nothing}
        ${view.items.some(({ starting }) => starting) ? html`<p class="second">${say.starting}</p>` : nothing}` : nothing}</asf-section>`;
  }

  private item(item: EveningItem): TemplateResult {
    const say = words().refit.evening;
    const { kind, id, name, tag, side, steps, fits, minutes, starting } = item;
    const isWhole = fits >= steps;
    const fit = isWhole ? say.fits : fits > 0 ? say.fitsSome(fits, steps) : say.fitsNot;
    const time = minutes > 0 ? html`<span class=${starting ? 'about' : ''}>${say.time(hours(minutes))}</span>` : say.noTime;
    return html`<a class="rf-evening-row ${fits > 0 ? 'rf-fits' : ''}" href=${kind === 'refit' ? `#/refit/${id}?step=next` : kind === 'decide' ? `#/decide/${id}` : `#/refit/none?step=${id}`}>
      <asf-icon name=${isWhole ? 'proved' : fits > 0 ? 'not-proved' : 'skip'} size="20"></asf-icon>
      <span class="row-words"><span class="row-name">${tag === undefined ? '' : `${tagFigures(tag)} `}${name || words().refit.noName}${side ? ` ${words().sides[side]}` : ''}</span>
      <span class="row-second">${say.kinds[kind](item)} · ${time} · <b>${fit}</b></span></span></a>`;
  }

  private take(minutes: number): void {
    this.minutes = minutes;
    journal.prefer(KEY, String(minutes));
    this.live.soon();
  }

  private readonly typed = (event: Event): void => {
    const text = textOf(event).trim();
    const minutes = readHours(text);
    if (!text) return;
    if (minutes === null || minutes <= 0 || minutes > 24 * 60) this.wrong = words().refit.evening.wrong;
    else this.take(minutes);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-evening': Evening } }
