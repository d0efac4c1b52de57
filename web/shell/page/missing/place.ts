import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { MissingView, StoredLine } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/empty';
import '../kit/head';
import '../kit/leader';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import { storedRow } from '../stores/stored-row';
import { when } from '../stores/when';
import '../styles/stores.css';
import { today } from '../today';
import { words } from '../words';
import { money } from '../words/format';
import './in-again';
import { outSecond } from './out-words';

/** What is missing; `#/missing/out` is all that is out of the house. */
@customElement('asf-place-missing')
export class MissingPlace extends LightElement {
  @property({ attribute: false }) address?: Address;
  private readonly live = new Live(this, 'missing', () => ({ ask: 'missing', today: today() }));
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult {
    const { view } = this.live;
    const isHouse = this.address?.id === 'out';
    const say = words().where;
    if (!view) return html`<asf-head .name=${isHouse ? say.house.title : say.missing.title} back="#/stores"></asf-head>`;
    return isHouse ? this.house(view) : this.missing(view);
  }

  private missing(view: MissingView): TemplateResult {
    const say = words().where.missing;
    const late = view.out.filter((line) => line.late !== undefined);
    const [missed = 0, , nowhere = 0, unseen = 0] = view.totals;
    // What lies nowhere yet has a row of its own in the stores: nobody looks for it.
    const all = missed + late.length + unseen;
    return html`<asf-head .name=${say.title} .second=${say.second(all)} back="#/stores"></asf-head><div class="body">
      ${all + nowhere === 0 ? html`<asf-empty .first=${say.all} .then=${say.allThen}></asf-empty>` : nothing}
      ${this.section(say.missed, view.missed, missed, '', (line) => say.missedSince(line.line.place.at(-1) ?? '', when(line.missed ?? 0)))}
      ${this.section(say.late, late, late.length, say.lateLead(view.out_days), outSecond)}
      ${this.section(say.nowhere, view.nowhere, nowhere, '', (line) => line.line.assembly_name)}
      ${this.section(say.unseen, view.unseen, unseen, say.unseenLead(view.unseen_days), (line) => say.unseenSince(line.line.place.at(-1) ?? '', when(line.seen?.at ?? 0)))}</div>`;
  }

  private house(view: MissingView): TemplateResult {
    const say = words().where.house;
    return html`<asf-head .name=${say.title} .second=${say.second(view.out.length, view.late)} back="#/stores"></asf-head><div class="body">
      ${view.out.length === 0 ? html`<asf-empty .first=${say.none} .then=${say.noneThen}></asf-empty>` : html`<ul class="stores-list">${view.out.map((line) => html`<li>${this.row(line, outSecond(line))}<asf-in-again .stored=${line}></asf-in-again></li>`)}</ul>
        ${view.unpriced === view.out.length ? html`<p class="second">${say.unpriced}</p>` : html`<asf-leader result .label=${say.worth} .value=${money(view.worth)}></asf-leader><p class="second">${say.worthSecond(view.unpriced)}</p>`}`}</div>`;
  }

  private section(label: string, lines: readonly StoredLine[], total: number, lead: string, second: (line: StoredLine) => unknown): TemplateResult | typeof nothing {
    if (lines.length === 0) return nothing;
    const rest = total - lines.length;
    return html`<asf-section .label=${label} .count=${String(total)}>${lead ? html`<p class="second">${lead}</p>` : nothing}
      <ul>${lines.map((line) => html`<li>${this.row(line, second(line))}</li>`)}</ul>${rest > 0 ? html`<p class="second">${words().where.missing.rest(rest)}</p>` : nothing}</asf-section>`;
  }

  private row(line: StoredLine, second: unknown): TemplateResult {
    return storedRow(line, line.line.photo ? this.pictures.small(line.line.photo) : '', second, openedFrom(`#/where/${line.line.id}`, this.address?.id === 'out' ? 'missing/out' : 'missing'));
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-missing': MissingPlace } }
