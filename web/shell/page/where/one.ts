import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Advice, PlaceStep, WhereView } from '../../bridge/protocol';
import { backOf, openedFrom } from '../back-of';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/icon';
import '../kit/message';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../missing/in-again';
import { outSecond } from '../missing/out-words';
import { standingWord } from '../parts/tag-figures';
import { sideBefore, tagInHand } from '../parts/tag-in-hand';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import '../stores/place-chooser';
import type { PlaceChosen } from '../stores/place-chooser';
import { seen } from '../stores/settle';
import { careWords } from '../stores/stored-row';
import { when } from '../stores/when';
import { words } from '../words';
import { capital } from '../words/format';

/** The way to one part, place by place with their photos; what is known otherwise; where it may lie next. */
@customElement('asf-where-one')
export class WhereOne extends LightElement {
  @property() partId = '';
  @property({ attribute: false }) address: Address | undefined;
  @state() private isMoving = false;
  private readonly live = new Live(this, 'where', () => ({ ask: 'where', part: this.partId }));
  private readonly pictures = new Pictures(this);

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('partId') && this.hasUpdated) this.live.anew();
  }

  override render(): TemplateResult {
    const say = words().where;
    const { view } = this.live;
    const back = backOf(this.address, '#/where');
    if (this.live.nothing) return html`<asf-head .name=${say.title} back=${back}></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}></asf-empty></div>`;
    if (!view || view.part.line.id !== this.partId) return html`<asf-head sheet .name=${say.title} back=${back}></asf-head>`;
    const { line } = view.part;
    const primary = this.primary(view);
    const second = html`${sideBefore(line)}${[standingWord(line), ...careWords(view.part.care)].join(', ')}`;
    return html`<asf-head sheet class="head-words-tight" .name=${line.name || words().sheet.noName} .second=${second} .tag=${tagInHand(line)} back=${back}></asf-head>
      <div class="body where-body">${this.said(view)}${this.way(view.way)}${this.next(view.next)}
        <div class="pair"><asf-button icon="parts" word=${say.sheet} href=${openedFrom(`#/part/${line.id}`, `where/${line.id}`)}></asf-button><asf-button icon="scan" word=${say.scanTo} href=${openedFrom(`#/scan?mode=move&part=${line.id}`, `where/${line.id}`)}></asf-button></div></div>
      ${primary === nothing ? nothing : html`<div class="foot store-foot">${primary}</div>`}
      <asf-place-chooser .open=${this.isMoving} now=${view.part.place ?? ''} @asf-close=${() => { this.isMoving = false; }} @asf-place=${this.moved}></asf-place-chooser>`;
  }

  private said({ part }: WhereView): TemplateResult | typeof nothing {
    const say = words().where;
    const place = part.line.place.at(-1) ?? '';
    const last = part.seen;
    const lastPlace = last?.path.at(-1) ?? '';
    if (part.lies === 'out') return html`<asf-message .happened=${outSecond(part)}><asf-in-again .stored=${part}></asf-in-again></asf-message>`;
    const elsewhere = last?.elsewhere && lastPlace ? html`<asf-message .happened=${say.seenElsewhere(lastPlace, when(last.at), part.lies === 'place' ? place : words().stores.lies[part.lies])}></asf-message>` : nothing;
    switch (part.lies) {
      case 'vehicle': return html`<p class="reckoned">${say.vehicle}</p>`;
      case 'refitted': return html`<p class="reckoned">${say.refitted}</p>`;
      case 'nowhere': return html`<p class="reckoned"><b>${say.nowhere}</b> ${say.nowhereTodo}</p>${elsewhere}`;
      case 'place': {
        const missed = part.missed === undefined ? nothing : html`<asf-message .happened=${say.missed(place, when(part.missed))} .todo=${say.missedTodo}></asf-message>`;
        const seenHere = last && !last.elsewhere ? html`<p class="second">${say.seen(when(last.at))}</p>` : nothing;
        const awkward = part.awkward.map((one) => words().stores.suits[one]).join(', ');
        // Another piece is on in its place.
        const old = part.line.standing === 'refitted' ? html`<p class="reckoned"><b>${say.oldHere}</b></p>` : nothing;
        return html`${old}${missed}${elsewhere}${seenHere}${awkward ? html`<p class="reckoned">${capital(awkward)}.</p>` : nothing}`;
      }
    }
  }

  private way(steps: readonly PlaceStep[]): TemplateResult | typeof nothing {
    if (steps.length === 0) return nothing;
    return html`<asf-section .label=${words().where.way}><ol class="way">${steps.map((step, i) => html`<li>${this.step(step, i === steps.length - 1)}</li>`)}</ol></asf-section>`;
  }

  private step({ id, name, place_kind: kind, code, photo }: PlaceStep, isLast: boolean): TemplateResult {
    const say = words().where;
    const picture = photo ? this.pictures.small(photo) : '';
    return html`<a class="way-step ${isLast ? 'way-last' : ''}" href=${`#/stores/${id}`}>
      <span class="way-words"><span class="way-name">${name || words().stores.noName}</span><span class="second">${say.step(kind ? words().stores.kinds[kind] : '', code ?? '')}</span>${isLast ? html`<span class="flag">${say.hereIt}</span>` : nothing}</span>
      ${picture ? html`<img class="way-photo" src=${picture} alt=${say.photoOf(name)} decoding="async">` : html`<span class="way-photo way-nophoto">${say.noPhoto}</span>`}</a>`;
  }

  private next(advice: readonly Advice[]): TemplateResult | typeof nothing {
    const say = words().where;
    if (advice.length === 0) return nothing;
    return html`<asf-section .label=${say.next}><p class="second">${say.nextLead}</p><ul>${advice.map(({ place, path, because }) => html`<li class="advice"><span class="advice-words"><b>${path.at(-1)}</b><span class="second">${path.slice(0, -1).join(' · ')}</span>
      <span class="reckoned">${capital(because.map((one) => words().stores.suits[one]).join(', '))}</span></span>
      <asf-button icon="place" word=${say.lay(path.at(-1) ?? '')} @click=${() => { void this.lay(place, path.at(-1) ?? ''); }}></asf-button></li>`)}</ul></asf-section>`;
  }

  private primary({ part }: WhereView): TemplateResult | typeof nothing {
    const say = words().where;
    if (part.lies !== 'place' && part.lies !== 'nowhere') return nothing;
    const { place } = part;
    if (place && (part.missed !== undefined || part.seen?.elsewhere)) {
      return html`<div class="primary-and-second"><asf-primary .verb=${say.found} icon="check" @click=${() => { void carryOut(seen(part.line.id, place), say.foundDone); }}></asf-primary><asf-button column icon="move" word=${say.move} @click=${() => { this.isMoving = true; }}></asf-button></div>`;
    }
    return html`<asf-primary .verb=${say.move} icon="move" @click=${() => { this.isMoving = true; }}></asf-primary>`;
  }

  private readonly moved = (event: CustomEvent<PlaceChosen>): void => {
    this.isMoving = false;
    const { id, name } = event.detail;
    if (id) void this.lay(id, name);
  };

  private async lay(place: string, name: string): Promise<void> {
    await carryOut({ do: 'change', ids: [this.partId], changes: [{ place }] }, words().where.moved(name));
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-where-one': WhereOne } }
