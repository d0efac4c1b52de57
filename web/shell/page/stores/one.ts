import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, PlaceView, StoredLine } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/message';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { keepListState } from '../parts/list-state';
import { Pictures } from '../pictures';
import '../sheet/conflict';
import '../styles/sheet.css';
import '../styles/stores.css';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { moment } from '../words/format';
import { placeList } from './list';
import './place-chooser';
import { nameOf, type PlaceChosen } from './place-chooser';
import './place-form';
import type { PlaceNamed } from './place-form';
import './place-photos';
import './rack';
import { scanFoot } from './scan-foot';
import './settle';
import { inPlace, isMissing, storedRow } from './stored-row';

type Doing = '' | 'make' | 'rename' | 'move' | 'strike';

/** One place: the rack it stands in, what its last count found, what lies in it. */
@customElement('asf-one-place')
export class OnePlace extends LightElement {
  @property() placeId = '';
  @state() private doing: Doing = '';

  private readonly live = new Live(this, 'place', () => ({ ask: 'place', place: this.placeId }));
  private readonly pictures = new Pictures(this);
  private readonly keeping = new KeepingWord(this);

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('placeId') || !this.hasUpdated) return;
    this.doing = '';
    this.live.anew();
  }

  override render(): TemplateResult {
    const say = words().stores;
    const { view } = this.live;
    if (this.live.nothing) return html`<asf-head .name=${say.title} back="#/stores"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="stores" word=${say.gone.go} href="#/stores"></asf-button></asf-empty></div>`;
    if (!view || view.line.record.id !== this.placeId) return html`<asf-head .name=${say.title} back="#/stores"></asf-head>`;
    const { line, running } = view;
    const outer = line.path.slice(0, -1);
    return html`<asf-head .name=${nameOf(line)} .second=${say.path(outer.length ? outer : [line.place_kind ? say.kinds[line.place_kind] : ''])} back=${view.way.length > 1 ? `#/stores/${view.way.at(-2)?.id ?? ''}` : '#/stores'} .cells=${[this.keeping.cell]}></asf-head>
      <div class="body stores-body">${this.body(view)}</div>
      ${scanFoot({ verb: running ? say.goOn : say.scanNext, href: this.scan(running ? `mode=count&count=${running.count}` : 'mode=open'),
        second: html`<asf-button column icon="move" word=${say.moveIt[line.place_kind ?? 'none']} @click=${() => { this.doing = 'move'; }}></asf-button>` })}
      ${this.dialogs(view)}`;
  }

  private body(view: PlaceView): TemplateResult {
    const say = words().stores;
    const { line, inside, rack } = view;
    return html`${line.record.struck ? html`<asf-message .happened=${say.isStruck}><asf-button icon="bring" word=${say.bring} @click=${() => { void strikeOut(line.record, say.brought(nameOf(line)), false); }}></asf-button></asf-message>` : nothing}
      ${line.record.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict}></asf-conflict>`)}
      ${rack ? html`<asf-rack .rack=${rack} at=${this.placeId}></asf-rack>` : nothing}
      ${view.parts.length || !inside.length || view.counted || view.running ? this.lying(view) : nothing}
      ${inside.length ? html`<asf-section .label=${say.inside} .count=${String(inside.length)}>${placeList(inside)}</asf-section>` : nothing}
      ${view.parts.length || !inside.length || view.counted || view.running ? nothing : html`<asf-button icon="count" word=${say.count} href=${this.scan(`mode=count&place=${this.placeId}`)}></asf-button>`}
      ${line.parts_within > line.parts ? html`<asf-button icon="list" word=${say.allParts} @click=${() => { this.asList(); }}></asf-button>` : nothing}
      <asf-place-photos .view=${view}></asf-place-photos>
      <asf-section .label=${say.more} .count=${line.code ? say.tag(line.code) : ''}><div class="pair stores-do">
        <asf-button icon="printer" word=${say.printTag} href=${`#/tags-sheet?place=${this.placeId}`}></asf-button>
        <asf-button icon="add" word=${say.makeIn(nameOf(line))} @click=${() => { this.doing = 'make'; }}></asf-button>
        <asf-button icon="caption" word=${say.rename} @click=${() => { this.doing = 'rename'; }}></asf-button>
        ${line.record.struck ? nothing : html`<asf-button icon="strike" word=${say.strike} @click=${() => { this.doing = 'strike'; }}></asf-button>`}</div></asf-section>`;
  }

  private lying(view: PlaceView): TemplateResult {
    const say = words().stores;
    const { line, parts, counted, running } = view;
    // What was missed or foreign is put right: the sum of that evening says no more of what lies here.
    const past = counted && (parts.length === 0 ? counted.expected > 0 : counted.seen < counted.expected && !parts.some(isAmiss));
    const label = running ? say.counting(running.seen, running.expected) : counted && !past ? (counted.expected ? say.counted(counted.seen, counted.expected) : say.nothingExpected) : say.lying;
    const beside = running ? '' : counted?.ended !== undefined && !past ? moment(new Date(counted.ended)) : say.parts(line.parts);
    return html`<asf-section .label=${label} .count=${beside}>
      ${parts.length === 0 ? html`<p class="second">${say.nothing}</p>${running || line.record.struck ? nothing : this.putIn()}` : nothing}
      <ul>${parts.map((part) => html`<li>${this.row(part, view)}</li>`)}</ul>
      <div class="pair stores-do">${running
        ? html`<asf-button icon="check" word=${say.endCount} @click=${() => { void this.end(running.count, nameOf(line)); }}></asf-button>`
        : html`<asf-button icon="count" word=${counted ? say.countAgain : say.count} href=${this.scan(`mode=count&place=${this.placeId}`)}></asf-button>`}</div></asf-section>`;
  }

  /** Scanning, with the way back to this place. */
  private scan(how: string): string {
    return openedFrom(`#/scan?${how}`, `stores/${this.placeId}`);
  }

  private putIn(): TemplateResult {
    const say = words().stores;
    return html`<div class="pair stores-do"><asf-button icon="scan" word=${say.scanIn} href=${this.scan('mode=move')}></asf-button>
      <asf-button icon="place" word=${say.chooseIn} href=${`#/stores/nowhere?into=${this.placeId}`}></asf-button></div>`;
  }

  private row(part: StoredLine, view: PlaceView): TemplateResult {
    return html`${storedRow(part, part.line.photo ? this.pictures.small(part.line.photo) : '', inPlace(part), openedFrom(`#/where/${part.line.id}`, `stores/${this.placeId}`))}
      ${isAmiss(part) ? html`<asf-settle .stored=${part} place=${this.placeId} name=${nameOf(view.line)}></asf-settle>` : nothing}`;
  }

  private dialogs(view: PlaceView): TemplateResult {
    const say = words().stores;
    const { line } = view;
    const close = (): void => { this.doing = ''; };
    const strike = html`<p class="reckoned">${say.strikeLead(line.parts_within)}</p>`;
    const isNaming = this.doing === 'rename';
    return html`<asf-place-form .open=${isNaming || this.doing === 'make'} .label=${isNaming ? say.rename : say.makeIn(nameOf(line))} .verb=${isNaming ? say.rename : say.make}
        .name=${isNaming ? line.record.values.name ?? '' : ''} .kind=${isNaming ? line.place_kind ?? 'box' : 'box'} @asf-close=${close} @asf-named=${this.named}></asf-place-form>
      <asf-dialog .open=${this.doing === 'strike'} .label=${say.strike} .body=${strike} .actions=${html`<asf-button icon="strike" word=${say.strike} @click=${() => { close(); void strikeOut(line.record, say.struck(nameOf(line))); }}></asf-button>`} @asf-close=${close}></asf-dialog>
      <asf-place-chooser .open=${this.doing === 'move'} .label=${say.moveTitle(nameOf(line))} none=${say.top} except=${line.record.id} now=${line.record.values.within ?? ''} @asf-close=${close} @asf-place=${this.moved}></asf-place-chooser>`;
  }

  private asList(): void {
    keepListState({ place: this.placeId, assembly: undefined, standing: undefined, route: undefined, struck: false, find: '', at: 0 });
    location.hash = '#/parts';
  }

  private readonly named = (event: CustomEvent<PlaceNamed>): void => {
    const say = words().stores;
    const { name, kind } = event.detail;
    const isRename = this.doing === 'rename';
    this.doing = '';
    if (isRename) void this.change([{ name }, { place_kind: kind }], say.renamed(name));
    else void carryOut({ do: 'create', id: newId(), kind: 'place', changes: [{ name }, { place_kind: kind }, { within: this.placeId }] }, say.made(name));
  };

  private readonly moved = (event: CustomEvent<PlaceChosen>): void => {
    this.doing = '';
    const say = words().stores;
    const { id, name } = event.detail;
    const line = this.live.view?.line;
    if (line) void this.change([id ? { within: id } : { clear: 'within' }], say.moved(nameOf(line), id ? name : say.outermost));
  };

  private async end(count: string, name: string): Promise<void> {
    await carryOut({ do: 'change', ids: [count], changes: [{ ended: Date.now() }] }, words().stores.ended(name));
  }

  private async change(changes: Change[], message: string): Promise<void> {
    await carryOut({ do: 'change', ids: [this.placeId], changes }, message);
  }
}

/** Missed by the count, or not of this place, and nothing was done about it yet. */
function isAmiss(part: StoredLine): boolean {
  return isMissing(part) || (part.counted === 'foreign' && !part.settled);
}

declare global { interface HTMLElementTagNameMap { 'asf-one-place': OnePlace } }
