import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PartView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/button';
import '../kit/message';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../missing/in-again';
import { outSecond } from '../missing/out-words';
import '../missing/send-form';
import '../stores/place-chooser';
import type { PlaceChosen } from '../stores/place-chooser';
import { when } from '../stores/when';
import { words } from '../words';
import './care';
import { write } from './write';

/** Where it lies, from the outermost place, and the way to move it; out of the house and in again; how it is kept. */
@customElement('asf-sheet-where')
export class SheetWhere extends LightElement {
  @property({ attribute: false }) view?: PartView;
  @state() private doing: '' | 'move' | 'send' = '';
  private readonly live = new Live(this, 'where', () => (this.view ? { ask: 'where', part: this.view.record.id } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('view') && changed.get('view')?.record.id !== this.view?.record.id) this.live.anew();
  }

  override render(): TemplateResult {
    const say = words().sheet.where;
    const path = this.view?.line.place ?? [];
    const last = path.at(-1);
    const close = (): void => { this.doing = ''; };
    return html`<button type="button" class="sheet-link" @click=${() => { this.doing = 'move'; }}>
      <span class="section-label">${say.title}</span>
      <span class="sheet-link-value">${last ? html`${path.slice(0, -1).map((name) => `${name} · `)}<b>${last}</b>` : say.nowhere}</span><asf-icon name="move" size="20"></asf-icon><span class="unseen">${say.move}</span></button>
      ${this.now()}
      <asf-sheet-care .view=${this.view} .known=${this.live.view}></asf-sheet-care>
      <asf-place-chooser .open=${this.doing === 'move'} none=${say.takeOut} now=${this.view?.line.place.length ? this.view.record.values.place ?? '' : ''} @asf-close=${close} @asf-place=${this.moved}></asf-place-chooser>
      <asf-send-form .open=${this.doing === 'send'} .partId=${this.view?.record.id ?? ''} .name=${this.view?.line.name || words().sheet.noName} @asf-close=${close}></asf-send-form>`;
  }

  private now(): TemplateResult | typeof nothing {
    const { view } = this.live;
    if (!view || view.part.line.id !== this.view?.record.id) return nothing;
    const say = words().where;
    const { part } = view;
    if (part.lies === 'out') return html`<asf-message .happened=${outSecond(part)}><asf-in-again .stored=${part}></asf-in-again></asf-message>`;
    const missed = part.missed === undefined ? nothing : html`<asf-message .happened=${say.missed(part.line.place.at(-1) ?? '', when(part.missed))}></asf-message>`;
    const isHere = part.lies === 'place' || part.lies === 'nowhere';
    return html`${missed}<div class="pair"><asf-button icon="find" word=${say.title} href=${openedFrom(`#/where/${part.line.id}`, `part/${part.line.id}`)}></asf-button>
      ${isHere ? html`<asf-button icon="route" word=${say.house.send} @click=${() => { this.doing = 'send'; }}></asf-button>` : nothing}</div>`;
  }

  private readonly moved = (event: CustomEvent<PlaceChosen>): void => {
    this.doing = '';
    const { id, name } = event.detail;
    const say = words().sheet.where;
    if (this.view) void write(this.view.record, [id ? { place: id } : { clear: 'place' }], id ? say.moved(name) : say.taken);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-where': SheetWhere } }
