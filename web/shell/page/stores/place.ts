import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { PlaceLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import '../styles/first.css';
import '../styles/stores.css';
import { today } from '../today';
import { words } from '../words';
import { placeList } from './list';
import './nowhere';
import './one';
import './place-form';
import type { PlaceNamed } from './place-form';
import { scanFoot } from './scan-foot';

/** Stores: places inside places; `#/stores/ID` is one of them, `#/stores/nowhere` what lies in none. */
@customElement('asf-place-stores')
export class PlaceStores extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private isMaking = false;

  private readonly places = new Live(this, 'places', () => (this.isOne ? null : { ask: 'places' }));
  private readonly missing = new Live(this, 'missing', () => (this.isOne ? null : { ask: 'missing', today: today() }));
  private readonly keeping = new KeepingWord(this);

  private get here(): string { return this.address?.id ?? ''; }
  private get isOne(): boolean { return this.here !== '' && this.here !== 'nowhere'; }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('address') && this.hasUpdated) {
      this.isMaking = false;
      this.places.soon();
      this.missing.soon();
    }
  }

  override render(): TemplateResult {
    const say = words().stores;
    if (this.isOne) return html`<asf-one-place .placeId=${this.here}></asf-one-place>`;
    if (this.here === 'nowhere') return html`<asf-nowhere .into=${this.address?.search.get('into') ?? ''}></asf-nowhere>`;
    const { view } = this.places;
    if (!view) return html`<asf-head .name=${say.title}></asf-head>`;
    const standing = view.places.filter(({ record }) => !record.struck);
    return html`<asf-head .name=${say.title} .second=${say.second(standing.length, view.nowhere)} .cells=${[this.keeping.cell]}></asf-head>
      <div class="body stores-body">${this.top(standing.filter(({ depth }) => depth === 0), view.nowhere)}</div>
      ${scanFoot({ verb: say.scan, href: '#/scan', second: html`<asf-button column icon="add" word=${say.make} @click=${() => { this.isMaking = true; }}></asf-button>` })}
      <asf-place-form .open=${this.isMaking} .label=${say.make} .verb=${say.make} kind="area" @asf-close=${() => { this.isMaking = false; }} @asf-named=${this.made}></asf-place-form>`;
  }

  private top(outermost: readonly PlaceLine[], nowhere: number): TemplateResult {
    const say = words().stores;
    if (outermost.length === 0) return html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>${this.asked()}${this.ways()}`;
    return html`${this.asked()}${placeList(outermost)}
      ${nowhere ? html`<a class="store-row" href="#/stores/nowhere"><asf-icon name="loose"></asf-icon><span class="store-name">${say.nowhere}</span><span class="store-count">${say.parts(nowhere)}</span><asf-icon name="next" size="20"></asf-icon></a>` : nothing}
      ${this.ways()}`;
  }

  /** What is asked most stands first. */
  private asked(): TemplateResult {
    const say = words().stores;
    const [missed = 0, , , unseen = 0] = this.missing.view?.totals ?? [];
    const amiss = missed + unseen + (this.missing.view?.late ?? 0);
    return html`<div class="pair stores-asked"><asf-button icon="find" word=${say.whereIsIt} href="#/where"></asf-button><asf-button icon="missing" word=${say.missingCount(amiss)} href="#/missing"></asf-button></div>`;
  }

  private ways(): TemplateResult {
    const say = words().stores;
    const out = this.missing.view?.totals[1] ?? 0;
    const way = (href: string, icon: 'route' | 'printer', word: string, second = ''): TemplateResult =>
      html`<a class="under-link" href=${href}><asf-icon name=${icon}></asf-icon><span>${word}</span><span class="second">${second}</span></a>`;
    return html`<nav class="store-ways" aria-label=${say.title}>${way('#/missing/out', 'route', say.outOfHouse, out ? say.parts(out) : '')}${way('#/tags-sheet?from=stores', 'printer', say.printTags)}</nav>`;
  }

  private readonly made = async (event: CustomEvent<PlaceNamed>): Promise<void> => {
    this.isMaking = false;
    const { name, kind } = event.detail;
    await carryOut({ do: 'create', id: newId(), kind: 'place', changes: [{ name }, { place_kind: kind }] }, words().stores.made(name));
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-stores': PlaceStores } }
