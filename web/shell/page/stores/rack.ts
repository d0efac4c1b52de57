import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { BoxView, LooseView, RackView, ShelfView } from '../../bridge/protocol';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { number } from '../words/format';

/** So many shelves are drawn at once: that of the place, with those beside it. */
const DRAWN = 3;

/** The rack from the front, its lowest shelf at the bottom. The box or shelf one stands at is buff. */
@customElement('asf-rack')
export class Rack extends LightElement {
  @property({ attribute: false }) rack?: RackView;
  /** The place that is shown: the rack, a shelf, a box or what is in it. */
  @property() at = '';
  @state() private all = false;

  override render(): TemplateResult | typeof nothing {
    const say = words().stores;
    const { rack } = this;
    if (!rack || rack.shelves.length === 0) return nothing;
    const shown = this.all ? rack.shelves : near(rack.shelves, this.at);
    return html`<div class="rack" role="group" aria-label=${say.rackOf(rack.name)}>${shown.toReversed().map((shelf) => this.shelf(shelf))}</div>
      ${rack.shelves.length > DRAWN ? html`<asf-button plain compact icon=${this.all ? 'close' : 'stores'} word=${this.all ? say.fewerShelves : say.shelves(rack.shelves.length)} @click=${() => { this.all = !this.all; }}></asf-button>` : nothing}`;
  }

  private shelf({ id, name, boxes, loose }: ShelfView): TemplateResult {
    const say = words().stores;
    const here = id !== undefined && id === this.at;
    const label = html`<span class="rack-number" aria-hidden="true">${short(name)}</span><span class="unseen">${say.shelfName(name)}</span>`;
    return html`<div class="rack-shelf ${here ? 'rack-here' : ''}">
      ${id ? html`<a class="rack-label" href=${`#/stores/${id}`} aria-current=${here ? 'true' : nothing}>${label}</a>` : html`<span class="rack-label">${label}</span>`}
      <ul class="rack-things">${boxes.map((box) => html`<li>${this.box(box)}</li>`)}${loose.map((one) => html`<li>${looseThing(one)}</li>`)}
        ${boxes.length + loose.length ? nothing : html`<li class="rack-empty second">${say.emptyShelf}</li>`}</ul></div>`;
  }

  private box({ id, name, parts, missing, here }: BoxView): TemplateResult {
    const say = words().stores;
    const many = missing ? say.ofParts(parts - missing, parts) : number(parts);
    // What is seen is part of what is read out: the whole name, of which the box shows the end.
    const shown = short(name) || '–';
    const before = name.endsWith(shown) ? name.slice(0, -shown.length) : `${name || say.noName} `;
    return html`<a class="rack-box ${here ? 'rack-box-here' : ''}" href=${`#/stores/${id}`} aria-current=${here ? 'true' : nothing} aria-description=${missing ? nothing : say.parts(parts)}>
      <span class="unseen">${before}</span><span class="rack-name">${shown}</span> <span class="rack-many">${many}</span></a>`;
  }
}

function looseThing({ id, name, pieces }: LooseView): TemplateResult {
  const say = words().stores;
  return html`<a class="rack-loose" href=${`#/part/${id}`}>${say.pieces(name || say.noName, pieces)}</a>`;
}

/** What tells it from its neighbours: "07" of "Box 07", "2" of "Shelf 2"; else the whole name. */
export function short(name: string): string {
  return /^\D*\s(\S*\d\S*)$/u.exec(name.trim())?.[1] ?? name;
}

/** The shelf of the place in the middle, where there are more than are drawn. */
export function near(shelves: readonly ShelfView[], at: string): readonly ShelfView[] {
  const of = shelves.findIndex(({ id, boxes }) => id === at || boxes.some(({ here }) => here));
  const from = Math.max(0, Math.min(Math.max(of, 0) - 1, shelves.length - DRAWN));
  return shelves.slice(from, from + DRAWN);
}

declare global { interface HTMLElementTagNameMap { 'asf-rack': Rack } }
