import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { PartLine, StoredLine } from '../../bridge/protocol';
import { backOf } from '../back-of';
import { Feedback, type Heard } from '../camera/feedback';
import { Viewfinder } from '../camera/viewfinder';
import { WakeLock } from '../camera/wake-lock';
import { go } from '../frame/start';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/head';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import { nameOf } from '../stores/place-chooser';
import { careWords, storedRow } from '../stores/stored-row';
import '../styles/scan.css';
import '../styles/stores.css';
import '../teardown/sight';
import { words } from '../words';
import { Frames } from './frames';
import './give';
import './keypad';
import type { Keypad } from './keypad';
import { Session, nameOfThing, type Mode } from './session';
import { signPlate, thingButton } from './sign';

const MODES: readonly Mode[] = ['open', 'move', 'count'];

/** Scan: tag after tag, to open, to move, to count; by the camera, or by typing the code. */
@customElement('asf-place-scan')
export class ScanPlace extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private isTyping = false;
  /** The tag that is given to a part: as it was when that was pressed, whatever is read since. */
  @state() private giving: { code: string; number: number } | null = null;
  @query('asf-keypad') private keypad!: Keypad | null;

  private readonly session = new Session('open');
  private readonly finder = new Viewfinder();
  private readonly frames = new Frames(this.finder, (codes) => { void this.session.scanned(codes); }, () => { void this.unreadable(); });
  private readonly feedback = new Feedback();
  private readonly wakeLock = new WakeLock();
  private readonly pictures = new Pictures(this);
  private begun = '';

  override connectedCallback(): void {
    super.connectedCallback();
    this.session.addEventListener('session', this.redraw);
    this.session.addEventListener('heard', this.heard);
    this.session.addEventListener('go', this.leads);
    this.finder.addEventListener('sight', this.redraw);
    desk.addEventListener('changed', this.changed);
    document.addEventListener('keydown', this.key);
    this.finder.open();
    this.frames.start();
    this.wakeLock.hold();
  }

  override disconnectedCallback(): void {
    this.session.removeEventListener('session', this.redraw);
    this.session.removeEventListener('heard', this.heard);
    this.session.removeEventListener('go', this.leads);
    this.finder.removeEventListener('sight', this.redraw);
    desk.removeEventListener('changed', this.changed);
    document.removeEventListener('keydown', this.key);
    this.frames.stop();
    this.finder.close();
    this.feedback.close();
    this.wakeLock.release();
    super.disconnectedCallback();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('address') || !this.address) return;
    const wanted = this.address.search.toString();
    if (wanted === this.begun && this.hasUpdated) return;
    this.begun = wanted;
    this.begin(this.address.search);
  }

  override render(): TemplateResult {
    const say = words().scan;
    const { session } = this;
    const torch = this.finder.torch === 'none' ? [] : [{ id: 'torch', word: say.torch, icon: 'torch' as const, pressed: this.finder.torch === 'on', label: say.torchName }];
    return html`<div class="scan ${this.keys ? 'scan-keys' : ''} ${this.isTyping && this.canSee ? 'scan-typing' : ''}" @click=${() => { this.finder.stir(); }}>
      <asf-head ink .name=${say.title} .second=${session.mode === 'count' && session.count ? say.isCounting(nameOf(session.count.place)) : say.second[session.mode]} back=${backOf(this.address, '#/stores')} .cells=${torch} @asf-cell=${() => { void this.finder.turnTorch(); }}></asf-head>
      <div class="scan-upper ${this.canSee ? '' : 'scan-blind'}"><asf-sight .finder=${this.finder} .todo=${this.finder.sight === 'refused' ? say.refused : say.noCamera} .over=${html`<span class="scan-frame" aria-hidden="true"></span>`} @asf-shoot=${this.wake}></asf-sight>${signPlate(session.sign, this.ready)}</div>
      <div class="scan-lower">
        ${this.asked()}
        ${this.keys ? html`<asf-keypad @asf-code=${(event: CustomEvent<string>) => { void this.session.typed(event.detail); this.keypad?.focus(); }}></asf-keypad>` : nothing}
        <asf-choice hide-label columns="3" .label=${say.mode} .options=${MODES.map((value) => ({ value, word: say.modes[value] }))} .value=${session.mode} @asf-change=${(event: CustomEvent<{ value: Mode }>) => { this.turn(event.detail.value); }}></asf-choice>
        ${this.work()}
        <div class="pair">${this.canSee ? html`<asf-button icon=${this.isTyping ? 'camera' : 'keyboard'} word=${this.isTyping ? say.camera : say.type} @click=${this.otherWay}></asf-button>` : nothing}
          <asf-button icon="undo" key="Z" word=${say.undo} .label=${say.undoName} ?disabled=${!session.last} @click=${() => { void session.undo(); }}></asf-button></div>
      </div>
      ${session.mode === 'count' && session.count ? html`<div class="foot"><asf-primary .verb=${say.end} .cost=${say.endCost(session.count.sums.missing)} @click=${this.end}></asf-primary></div>` : nothing}
      <asf-give-tag .open=${this.giving !== null} .code=${this.giving?.code ?? ''} @asf-close=${() => { this.giving = null; }} @asf-part=${this.give}></asf-give-tag></div>`;
  }

  private get canSee(): boolean {
    return this.finder.sight !== 'none' && this.finder.sight !== 'refused';
  }

  /** The code is typed: by choice, or for want of a camera. */
  private get keys(): boolean {
    return this.isTyping || !this.canSee;
  }

  private get ready(): string {
    const say = words().scan;
    const { mode, count } = this.session;
    if (mode === 'count') return count ? say.ready.count : say.ready.countPlace;
    return mode === 'open' && this.keys ? say.ready.openTyped : say.ready[mode];
  }

  private asked(): TemplateResult | typeof nothing {
    const say = words().scan;
    const { session } = this;
    const asked = session.sign?.asked;
    switch (asked?.ask) {
      case undefined: return nothing;
      case 'sure': return thingButton(asked.thing, say.yes, () => { void session.answer(asked.thing); });
      case 'which': return html`<div class="scan-asked">${asked.things.map((thing) => thingButton(thing, '', () => { void session.answer(thing); }))}</div>`;
      case 'unknown': return html`<div class="scan-asked">
        <asf-button icon="parts" word=${say.newPart} @click=${() => { void session.make('part', asked.number, asked.code); }}></asf-button>
        <asf-button icon="box" word=${say.newPlace} @click=${() => { void session.make('place', asked.number, asked.code); }}></asf-button>
        <asf-button icon="mark" word=${say.giveTo} @click=${() => { this.giving = { code: asked.code, number: asked.number }; }}></asf-button></div>`;
    }
  }

  private work(): TemplateResult | typeof nothing {
    const say = words().scan;
    const { session } = this;
    if (session.mode === 'move' && session.hand.length > 0) {
      return html`<asf-section .label=${say.inHandLabel} .count=${say.inHand(session.hand.length)}><p class="scan-hand">${session.hand.map(nameOfThing).join(', ')}</p>
        <asf-button icon="close" word=${say.putDown} @click=${() => { session.putDown(); }}></asf-button></asf-section>`;
    }
    const { count } = session;
    if (session.mode !== 'count' || !count) return nothing;
    const { sums } = count;
    const toSee = count.lines.filter(({ counted }) => counted === 'missing');
    return html`<p class="scan-progress"><span class="unseen">${say.progressLabel} </span><b>${say.progress(sums.seen, sums.expected)}</b>${sums.foreign ? html`<span>${say.foreignCount(sums.foreign)}</span>` : nothing}</p>
      <asf-section .label=${say.toSee} .count=${String(toSee.length)}>${toSee.length === 0 ? html`<p class="second">${say.toSeeNone}</p>` : nothing}
        <ul>${toSee.map(awaited).map((line) => html`<li>${storedRow(line, line.line.photo ? this.pictures.small(line.line.photo) : '', careWords(line.care).join(', '))}</li>`)}</ul></asf-section>`;
  }

  private begin(search: URLSearchParams): void {
    const mode = MODES.find((one) => one === search.get('mode')) ?? 'open';
    this.session.turn(mode);
    const [place, count, part] = [search.get('place'), search.get('count'), search.get('part')];
    if (mode === 'count' && count) void this.session.goOn(count);
    else if (mode === 'count' && place) void this.session.begin(place);
    else if (mode === 'move' && part) void this.session.pick(part);
  }

  private turn(mode: Mode): void {
    this.session.turn(mode);
  }

  private readonly otherWay = async (): Promise<void> => {
    await this.type(!this.isTyping);
    if (this.isTyping) this.keypad?.focus();
    else window.scrollTo(0, 0);
  };

  // What is not seen is not read: a tag that lies in the picture would be moved or counted behind the keys.
  private async type(isTyping: boolean): Promise<void> {
    this.isTyping = isTyping;
    if (!isTyping) this.session.readAgain();
    await this.updateComplete;
    const sight = this.querySelector('asf-sight');
    if (sight && getComputedStyle(sight).display === 'none') {
      this.frames.stop();
      this.finder.close();
    } else if (!isTyping) this.wake();
  }

  private async unreadable(): Promise<void> {
    this.session.unreadable();
    if (this.canSee) await this.type(true);
  }

  private readonly wake = (): void => {
    this.finder.open();
    this.frames.start();
  };

  private readonly redraw = (): void => {
    this.countIsAddress();
    this.requestUpdate();
  };

  // A count that is under way has an address of its own: to come back to it, by a kill or by Back, begins no other.
  private countIsAddress(): void {
    const { mode, count } = this.session;
    if (mode !== 'count' || !count || !this.isConnected) return;
    const from = this.address?.search.get('from');
    const wanted = new URLSearchParams({ mode: 'count', count: count.record.id, ...(from ? { from } : {}) }).toString();
    if (wanted === this.begun) return;
    this.begun = wanted;
    const hash = `#/scan?${wanted}`;
    history.replaceState(history.state, '', hash);
    journal.at({ hash });
  }

  private readonly changed = (): void => { void this.session.refresh(); };

  private readonly heard = (event: Event): void => {
    if (event instanceof CustomEvent) this.feedback.give((event as CustomEvent<Heard>).detail);
  };

  private readonly leads = (event: Event): void => {
    if (!(event instanceof CustomEvent)) return;
    // A tag read while the next place loads would lead somewhere else.
    this.frames.stop();
    go(String((event as CustomEvent<string>).detail));
  };

  private readonly give = (event: CustomEvent<PartLine>): void => {
    const { giving } = this;
    this.giving = null;
    if (giving) void this.session.give(event.detail.id, event.detail.name || words().scan.noName, giving.number, giving.code);
  };

  private readonly end = async (): Promise<void> => {
    const place = this.session.count?.place.record.id;
    if (place && await this.session.end()) go(`#/stores/${place}`, true);
  };

  private readonly key = (event: KeyboardEvent): void => {
    const isFree = event.target instanceof Element && event.target.closest('input, textarea, select, dialog') === null;
    if (!isFree || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key.toLowerCase() === 'z' && this.session.last) {
      event.preventDefault();
      void this.session.undo();
    }
  };
}

/** Not seen yet is not missing: the count goes on. */
function awaited({ counted: _, missed: __, ...line }: StoredLine): StoredLine {
  return { ...line, line: { ...line.line, missing: false } };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-scan': ScanPlace } }
