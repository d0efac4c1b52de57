import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, PlaceKind, PlaceLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/choice';
import '../kit/dialog';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/message';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { keepListState } from '../parts/list-state';
import { partRow } from '../parts/part-row';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import '../sheet/conflict';
import '../styles/sheet.css';
import '../styles/stores.css';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import './place-chooser';
import { nameOf, withAllInside, type PlaceChosen } from './place-chooser';
import { placeKinds } from './place-kinds';

/** So many parts of a place are shown here; the rest through the list. */
const SHOWN = 40;

/** Stores: places inside places; `#/stores/ID` is one of them, `#/stores/nowhere` what lies in none. */
@customElement('asf-place-stores')
export class PlaceStores extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private doing: '' | 'make' | 'rename' | 'move' | 'strike' = '';
  @state() private name = '';
  @state() private kind: PlaceKind = 'box';
  @state() private wrong = '';

  private readonly places = new Live(this, 'places', () => ({ ask: 'places' }));
  private readonly parts = new Live(this, 'parts', () => (this.here && this.here !== 'nowhere' ? { ask: 'parts', place: this.here, group: 'none', count: SHOWN } : { ask: 'parts', group: 'place', count: SHOWN }));
  private readonly pictures = new Pictures(this);
  private readonly keeping = new KeepingWord(this);

  private get here(): string { return this.address?.id ?? ''; }
  private get line(): PlaceLine | undefined { return this.places.view?.places.find(({ record }) => record.id === this.here); }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('address') && this.hasUpdated) {
      this.doing = '';
      this.parts.anew();
    }
  }

  override render(): TemplateResult {
    const say = words().stores;
    const { view } = this.places;
    if (!view) return html`<asf-head .name=${say.title}></asf-head>`;
    if (this.here === 'nowhere') return this.nowhere();
    const { line } = this;
    if (this.here && !line) return html`<asf-head .name=${say.title} back="#/stores"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="stores" word=${say.gone.go} href="#/stores"></asf-button></asf-empty></div>`;
    return html`${this.head(line)}<div class="body stores-body">${line ? this.inside(line) : this.top()}</div>${this.foot(line)}${this.dialogs(line)}`;
  }

  private head(line: PlaceLine | undefined): TemplateResult {
    const say = words().stores;
    const { view } = this.places;
    if (!line) {
      const standing = view?.places.filter(({ record }) => !record.struck).length ?? 0;
      return html`<asf-head .name=${say.title} .second=${say.second(standing, view?.nowhere ?? 0)} .cells=${[this.keeping.cell]}></asf-head>`;
    }
    const within = line.record.values.within;
    return html`<asf-head .name=${nameOf(line)} .second=${say.path([...line.path.slice(0, -1), line.place_kind ? say.kinds[line.place_kind] : ''].filter(Boolean))} back=${within ? `#/stores/${within}` : '#/stores'} .cells=${[this.keeping.cell]}></asf-head>`;
  }

  private top(): TemplateResult {
    const say = words().stores;
    const { view } = this.places;
    const outermost = this.directlyIn(undefined);
    if (outermost.length === 0) return html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>`;
    return html`${this.list(outermost)}
      ${view?.nowhere ? html`<a class="store-row" href="#/stores/nowhere"><asf-icon name="loose"></asf-icon><span class="store-name">${say.nowhere}</span><span class="store-count">${say.parts(view.nowhere)}</span><asf-icon name="next" size="20"></asf-icon></a>` : nothing}`;
  }

  private inside(line: PlaceLine): TemplateResult {
    const say = words().stores;
    const children = this.directlyIn(line.record.id);
    const lying = (this.parts.view?.rows ?? []).filter((part) => part.place.length === line.path.length);
    return html`
      ${line.record.struck ? html`<asf-message .happened=${say.isStruck}><asf-button icon="bring" word=${say.bring} @click=${() => { void strikeOut(line.record, say.brought(nameOf(line)), false); }}></asf-button></asf-message>` : nothing}
      ${line.record.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict}></asf-conflict>`)}
      ${children.length ? html`<asf-section .label=${say.inside} .count=${String(children.length)}>${this.list(children)}</asf-section>` : nothing}
      <asf-section .label=${say.lying} .count=${say.parts(line.parts)}>
        ${line.parts === 0 ? html`<p class="second">${say.nothing}</p>` : nothing}
        <ul>${lying.map((part) => html`<li>${partRow(part, { picture: part.photo ? this.pictures.small(part.photo) : '', href: `#/part/${part.id}` })}</li>`)}</ul>
        ${line.parts_within > lying.length ? html`<asf-button icon="list" word=${say.allParts} @click=${() => { this.asList(line.record.id); }}></asf-button>` : nothing}</asf-section>
      <div class="pair stores-do">
        <asf-button icon="caption" word=${say.rename} @click=${() => { this.start('rename', nameOf(line), line.place_kind); }}></asf-button>
        <asf-button icon="move" word=${say.move} @click=${() => { this.doing = 'move'; }}></asf-button>
        ${line.record.struck ? nothing : html`<asf-button icon="strike" word=${say.strike} @click=${() => { this.doing = 'strike'; }}></asf-button>`}</div>`;
  }

  private nowhere(): TemplateResult {
    const say = words().stores;
    const group = this.parts.view?.groups.find(({ id }) => !id);
    return html`<asf-head .name=${say.nowhere} .second=${say.parts(this.places.view?.nowhere ?? 0)} back="#/stores"></asf-head>
      <div class="body"><p class="reckoned">${say.nowhereLead}</p><asf-button icon="list" word=${say.allParts} @click=${() => {
        keepListState({ group: 'place', place: undefined, assembly: undefined, standing: undefined, route: undefined, struck: false, find: '', at: group?.from ?? 0 });
        location.hash = '#/parts';
      }}></asf-button></div>`;
  }

  private list(lines: readonly PlaceLine[]): TemplateResult {
    const say = words().stores;
    return html`<ul>${lines.map((line) => html`<li><a class="store-row" href=${`#/stores/${line.record.id}`}>${lidded(line)}
      <span class="store-name">${nameOf(line)}<span class="second">${line.place_kind ? say.kinds[line.place_kind] : nothing}</span></span>
      <span class="store-count">${say.parts(line.parts_within)}</span><asf-icon name="next" size="20"></asf-icon></a></li>`)}</ul>`;
  }

  private foot(line: PlaceLine | undefined): TemplateResult {
    const say = words().stores;
    return html`<div class="foot"><asf-primary small .verb=${line ? say.makeIn(nameOf(line)) : say.make} icon="add" @click=${() => { this.start('make', '', line ? 'box' : 'area'); }}></asf-primary></div>`;
  }

  private dialogs(line: PlaceLine | undefined): TemplateResult {
    const say = words().stores;
    const close = (): void => { this.doing = ''; };
    const named = this.doing === 'make' || this.doing === 'rename';
    const strike = html`<p class="reckoned">${say.strikeLead(line?.parts_within ?? 0)}</p>`;
    const within = line ? withAllInside(this.places.view?.places ?? [], line.record.id) : new Set<string>();
    return html`
      <asf-dialog .open=${named} .label=${this.doing === 'rename' ? say.rename : line ? say.makeIn(nameOf(line)) : say.make} .body=${named ? this.form() : nothing} @asf-close=${close}></asf-dialog>
      <asf-dialog .open=${this.doing === 'strike'} .label=${say.strike} .body=${strike} .actions=${html`<asf-button icon="strike" word=${say.strike} @click=${() => { close(); if (line) void strikeOut(line.record, say.struck(nameOf(line))); }}></asf-button>`} @asf-close=${close}></asf-dialog>
      ${line ? html`<asf-place-chooser .open=${this.doing === 'move'} .label=${say.moveTitle(nameOf(line))} none=${say.top} except=${within.size ? line.record.id : ''} @asf-close=${close} @asf-place=${this.moved}></asf-place-chooser>` : nothing}`;
  }

  private form(): TemplateResult {
    const say = words().stores;
    return html`<form class="place-form" @submit=${this.named}>
      <asf-field .label=${say.name} .value=${this.name} .error=${this.wrong} max="200" @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) { this.name = event.target.value; this.wrong = ''; } }}></asf-field>
      <asf-choice columns="3" .label=${say.kind} .options=${placeKinds()} .value=${this.kind} @asf-change=${(event: CustomEvent<{ value: PlaceKind }>) => { this.kind = event.detail.value; }}></asf-choice>
      <asf-primary small kind="submit" .verb=${this.doing === 'rename' ? say.rename : say.make} icon="check"></asf-primary></form>`;
  }

  private directlyIn(within: string | undefined): PlaceLine[] {
    const all = this.places.view?.places ?? [];
    return all.filter(({ record, depth }) => !record.struck && (within ? record.values.within === within : depth === 0));
  }

  private start(doing: 'make' | 'rename', name: string, kind: PlaceKind = 'box'): void {
    this.doing = doing;
    this.name = name;
    this.kind = kind;
    this.wrong = '';
  }

  private asList(place: string): void {
    keepListState({ place, assembly: undefined, standing: undefined, route: undefined, struck: false, find: '', at: 0 });
    location.hash = '#/parts';
  }

  private readonly named = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().stores;
    const name = this.name.trim();
    if (!name) {
      this.wrong = say.needsName;
      return;
    }
    const { doing } = this;
    this.doing = '';
    if (doing === 'rename') await this.change([{ name }, { place_kind: this.kind }], say.renamed(name));
    else await carryOut({ do: 'create', id: newId(), kind: 'place', changes: [{ name }, { place_kind: this.kind }, ...(this.here ? [{ within: this.here }] : [])] }, say.made(name));
  };

  private readonly moved = (event: CustomEvent<PlaceChosen>): void => {
    this.doing = '';
    const say = words().stores;
    const { id, name } = event.detail;
    if (this.line) void this.change([id ? { within: id } : { clear: 'within' }], say.moved(nameOf(this.line), id ? name : say.outermost));
  };

  private async change(changes: Change[], message: string): Promise<void> {
    await carryOut({ do: 'change', ids: [this.here], changes }, message);
  }
}

/** A place is a box with a lid line, never a tag. */
function lidded(line: PlaceLine): TemplateResult {
  return html`<span class="store-box" aria-hidden="true">${line.parts_within}</span>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-stores': PlaceStores } }
