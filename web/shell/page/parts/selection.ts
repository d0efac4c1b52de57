import { html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { Change, Seen } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import '../stores/place-chooser';
import type { PlaceChosen } from '../stores/place-chooser';
import { words } from '../words';

/** What can be done with the parts selected. Tells `asf-all`, and `asf-none` when it is done with them. */
@customElement('asf-parts-selection')
export class PartsSelection extends LightElement {
  @property({ attribute: false }) ids: ReadonlySet<string> = new Set();
  @property({ type: Number }) found = 0;
  /** The list shows struck-out parts. */
  @property({ type: Boolean }) struck = false;
  @state() private moving = false;
  /** What stood in the parts when they were selected: what comes in afterwards is not gone over. */
  private seen: Promise<Seen> = Promise.resolve({});
  private looked: ReadonlySet<string> = new Set();

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('ids')) return;
    const ids = [...this.ids].filter((id) => !this.looked.has(id));
    this.looked = this.ids;
    if (ids.length > 0) this.seen = together(this.seen, look(ids));
  }

  override render(): TemplateResult {
    const say = words().parts;
    const n = this.ids.size;
    const all = n === this.found;
    return html`<div class="selection">
      <p class="selection-count" role="status">${say.selected(n)}</p>
      <asf-button compact plain word=${all && n > 0 ? say.selectNone : say.selectAll(this.found)} @click=${() => { this.tell(all ? 'asf-none' : 'asf-all', null); }}></asf-button>
      <div class="pair selection-do">
        ${this.struck ? html`<asf-button icon="bring" word=${say.bring} ?disabled=${n === 0} @click=${() => { void this.strike(false); }}></asf-button>` : html`
          <asf-button icon="move" key="M" word=${say.move} ?disabled=${n === 0} @click=${() => { this.move(); }}></asf-button>
          <asf-button icon="strike" word=${say.strike} ?disabled=${n === 0} @click=${() => { void this.strike(true); }}></asf-button>`}
      </div>
      <asf-place-chooser .open=${this.moving} none=${words().sheet.where.takeOut} @asf-close=${() => { this.moving = false; }} @asf-place=${this.place}></asf-place-chooser>
    </div>`;
  }

  /** Opens the choice of a place; also by the key M. */
  move(): void {
    if (this.ids.size > 0 && !this.struck) this.moving = true;
  }

  private readonly place = (event: CustomEvent<PlaceChosen>): void => {
    this.moving = false;
    const { id, name } = event.detail;
    void this.change(id ? { place: id } : { clear: 'place' }, words().parts.moved(this.ids.size, name));
  };

  private async strike(struck: boolean): Promise<void> {
    const say = words().parts;
    await this.change({ struck }, struck ? say.struckOut(this.ids.size) : say.broughtBack(this.ids.size));
  }

  private async change(change: Change, message: string): Promise<void> {
    const { ok } = await carryOut({ do: 'change', ids: [...this.ids], changes: [change], seen: await this.seen }, message);
    if (ok) this.tell('asf-none', null);
  }
}

async function look(ids: string[]): Promise<Seen> {
  const view = await desk.ask({ ask: 'seen', ids });
  return view.view === 'seen' ? view.seen : {};
}

/** Entries are of one record each: those of several never get in each other's way. */
async function together(one: Promise<Seen>, other: Promise<Seen>): Promise<Seen> {
  const [all, more] = await Promise.all([one, other]);
  return Object.fromEntries([...new Set([...Object.keys(all), ...Object.keys(more)])].map((field) => [field, [...(all[field as keyof Seen] ?? []), ...(more[field as keyof Seen] ?? [])]])) as Seen;
}

declare global { interface HTMLElementTagNameMap { 'asf-parts-selection': PartsSelection } }
