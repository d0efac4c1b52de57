import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { PlaceKind, PlaceLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/choice';
import '../kit/dialog';
import '../kit/field';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../styles/stores.css';
import { words } from '../words';
import { placeKinds } from './place-kinds';

export interface PlaceChosen { id: string | null; name: string }

/** Choose where something goes: a place that is there, a new one, or none. Tells `asf-place`, and `asf-close` without a choice. */
@customElement('asf-place-chooser')
export class PlaceChooser extends LightElement {
  @property({ type: Boolean }) open = false;
  @property() label = '';
  /** The word for "in no place"; empty: not offered. */
  @property() none = '';
  /** This place and all inside it are no choice: it cannot be moved into itself. */
  @property() except = '';
  /** The place it lies in now. */
  @property() now = '';

  @state() private sought = '';
  @state() private fresh = '';
  @state() private kind: PlaceKind = 'box';
  @state() private wrong = '';
  private busy = false;

  private readonly places = new Live(this, 'places', () => ({ ask: 'places' }));

  override render(): TemplateResult {
    const say = words().stores;
    return html`<asf-dialog ?still=${this.still} .open=${this.open} .label=${this.label || say.choose} .body=${this.open ? this.body() : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog>`;
  }

  /** Many places are searched; with a few to choose from nobody types, and the keys of a phone would lie over them. */
  private get isSearched(): boolean {
    return (this.places.view?.places.length ?? 0) > 6;
  }

  private get still(): boolean {
    return !this.isSearched && (!this.places.view || this.choices().length > 0);
  }

  private body(): TemplateResult {
    const say = words().stores;
    const lines = this.choices();
    return html`
      ${this.isSearched
        ? html`<asf-field kind="find" icon="find" hide-label label=${say.findPlace} placeholder=${say.findPlace} .value=${this.sought} @input=${(event: Event) => { this.sought = valueOf(event); }}></asf-field>` : nothing}
      ${lines.length === 0 && this.sought ? html`<p class="second">${say.noneFound}</p>` : nothing}
      <ul class="place-choices">${lines.map((line) => html`<li><button type="button" class="place-choice" aria-current=${line.record.id === this.now ? 'true' : nothing} @click=${() => { this.choose(line.record.id, nameOf(line)); }}>
        <span class="place-choice-name">${nameOf(line)}${line.record.id === this.now ? html` <span class="flag">${say.liesNow}</span>` : nothing}</span><span class="second">${say.path(line.path.slice(0, -1))}</span></button></li>`)}
        ${this.none ? html`<li><button type="button" class="place-choice" @click=${() => { this.choose(null, this.none); }}><span class="place-choice-name">${this.none}</span></button></li>` : nothing}</ul>
      <form class="place-new" @submit=${this.make}>
        <asf-field .label=${say.make} .value=${this.fresh} .error=${this.wrong} max="200" @input=${(event: Event) => { this.fresh = valueOf(event); this.wrong = ''; }}></asf-field>
        <asf-choice hide-label .label=${say.kind} columns="3" .options=${placeKinds()} .value=${this.kind} @asf-change=${(event: CustomEvent<{ value: PlaceKind }>) => { this.kind = event.detail.value; }}></asf-choice>
        <asf-button kind="submit" icon="add" word=${say.newHere}></asf-button>
      </form>`;
  }

  private choices(): PlaceLine[] {
    const all = (this.places.view?.places ?? []).filter(({ record }) => !record.struck);
    const sought = this.sought.trim().toLowerCase();
    const barred = this.except ? withAllInside(all, this.except) : new Set<string>();
    return all.filter((line) => !barred.has(line.record.id) && line.path.join(' ').toLowerCase().includes(sought));
  }

  private choose(id: string | null, name: string): void {
    this.open = false;
    this.sought = '';
    this.tell<PlaceChosen>('asf-place', { id, name });
  }

  private readonly make = async (event: Event): Promise<void> => {
    event.preventDefault();
    const name = this.fresh.trim();
    if (!name) {
      this.wrong = words().stores.needsName;
      return;
    }
    // A second tap while the first is on its way would make two of it.
    if (this.busy) return;
    this.busy = true;
    const id = newId();
    const { ok } = await carryOut({ do: 'create', id, kind: 'place', changes: [{ name }, { place_kind: this.kind }] }).finally(() => { this.busy = false; });
    if (!ok) return;
    this.fresh = '';
    this.choose(id, name);
  };
}

export function nameOf(line: PlaceLine): string {
  return line.record.values.name ?? words().stores.noName;
}

/** A place and everything within it, by the record. */
export function withAllInside(lines: readonly PlaceLine[], id: string): Set<string> {
  const inside = new Set([id]);
  for (const { record } of lines) if (record.values.within && inside.has(record.values.within)) inside.add(record.id);
  return inside;
}

function valueOf({ target }: Event): string {
  return target instanceof HTMLInputElement ? target.value : '';
}

declare global { interface HTMLElementTagNameMap { 'asf-place-chooser': PlaceChooser } }
