import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Id, StoredLine } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { keepListState } from '../parts/list-state';
import { Pictures } from '../pictures';
import { today } from '../today';
import { words } from '../words';
import './place-chooser';
import { nameOf, type PlaceChosen } from './place-chooser';
import { storedRow } from './stored-row';

/** So many are shown; the list of parts has them all. */
const SHOWN = 40;

/** What is off and lies nowhere yet, each with its way into a place: one to be chosen, or the one that was come from. */
@customElement('asf-nowhere')
export class Nowhere extends LightElement {
  /** The place all of them are offered to; without it each is asked for. */
  @property() into = '';
  @state() private laying: StoredLine | null = null;
  private readonly missing = new Live(this, 'missing', () => ({ ask: 'missing', today: today() }));
  private readonly places = new Live(this, 'places', () => ({ ask: 'places' }));
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult {
    const say = words().stores;
    const [view, places] = [this.missing.view, this.places.view];
    const place = places?.places.find(({ record }) => record.id === this.into);
    const back = this.into ? `#/stores/${this.into}` : '#/stores';
    if (!view || !places) return html`<asf-head .name=${say.nowhere} back=${back}></asf-head>`;
    const all = view.totals[2];
    const shown = view.nowhere.slice(0, SHOWN);
    const into = place ? nameOf(place) : '';
    return html`<asf-head .name=${into ? say.putInto(into) : say.nowhere} .second=${into ? say.nowhere : say.parts(all)} back=${back}></asf-head>
      <div class="body">${all === 0 ? html`<asf-empty .first=${say.noneNowhere}></asf-empty>` : html`<p class="reckoned">${say.nowhereLead}</p>`}
        <ul>${shown.map((part) => html`<li>${this.row(part, into)}</li>`)}</ul>
        ${all > shown.length ? html`<p class="second">${words().where.missing.rest(all - shown.length)}</p>` : nothing}
        <div class="pair"><asf-button icon="missing" word=${say.missing} href="#/missing"></asf-button><asf-button icon="list" word=${say.allNowhere} @click=${toList}></asf-button></div></div>
      <asf-place-chooser .open=${this.laying !== null} .label=${this.laying ? say.layTitle(nameOfPart(this.laying)) : ''} @asf-close=${() => { this.laying = null; }} @asf-place=${this.chosen}></asf-place-chooser>`;
  }

  private row(part: StoredLine, into: string): TemplateResult {
    const say = words().stores;
    const word = into ? say.putHere : say.choose;
    return html`${storedRow(part, part.line.photo ? this.pictures.small(part.line.photo) : '', part.line.assembly_name, openedFrom(`#/where/${part.line.id}`, into ? `stores/nowhere?into=${this.into}` : 'stores/nowhere'))}
      <div class="pair store-settle"><asf-button icon="place" word=${word} label="${word}: ${nameOfPart(part)}" @click=${() => { if (into) void lay(part, this.into, into); else this.laying = part; }}></asf-button></div>`;
  }

  private readonly chosen = (event: CustomEvent<PlaceChosen>): void => {
    const { laying } = this;
    const { id, name } = event.detail;
    this.laying = null;
    if (laying && id) void lay(laying, id, name);
  };
}

async function lay(part: StoredLine, place: Id, name: string): Promise<void> {
  await carryOut({ do: 'change', ids: [part.line.id], changes: [{ place }] }, words().stores.settle.laidDone(nameOfPart(part), name));
}

function nameOfPart({ line }: StoredLine): string {
  return line.name || words().parts.noName;
}

function toList(): void {
  keepListState({ group: 'place', place: undefined, assembly: undefined, standing: undefined, route: undefined, struck: false, find: '', at: 0 });
  location.hash = '#/parts';
}

declare global { interface HTMLElementTagNameMap { 'asf-nowhere': Nowhere } }
