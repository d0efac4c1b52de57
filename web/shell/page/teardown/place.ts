import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import { CAMERA, CHOOSE, readPicture } from '../camera/pictures-in';
import { Series } from '../camera/series';
import { Viewfinder, type Shot } from '../camera/viewfinder';
import { WakeLock } from '../camera/wake-lock';
import '../cautions/plate';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/dialog';
import '../kit/head';
import '../kit/message';
import '../kit/next-tag';
import '../kit/primary';
import '../kit/shutter';
import '../kit/side';
import '../kit/tag';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import { say } from '../say';
import '../speak/hold-button';
import type { Slice } from '../speak/spoken-note';
import '../styles/teardown.css';
import { words } from '../words';
import { benchOf } from './bench';
import { joinedCounter } from './counter';
import { wasTyping } from './more';
import { nameChips } from './names';
import { endOf, sideInHand } from './side-of';
import './sight';
import type { Sight } from './sight';
import { soFar } from './so-far';
import { SpokenNotes } from './spoken-notes';
import './strip';
import { tagNumber } from './tag-number';

/** Teardown: photo after photo of the part in hand, then the next tag. */
@customElement('asf-place-teardown')
export class TeardownPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private more = false;
  @state() private driver: 'left' | 'right' = 'right';
  @state() private jobName = '';
  /** The tag that was to be followed by the next and holds nothing yet. */
  @state() private early = '';
  @query('asf-sight') private sight!: Sight | null;

  private readonly bench = benchOf(desk.current() ?? '');
  private readonly notes = new SpokenNotes(this.bench);
  private readonly finder = new Viewfinder();
  private readonly series = new Series(() => { this.shoot(); });
  private readonly wakeLock = new WakeLock();
  private readonly keeping = new KeepingWord(this);

  override connectedCallback(): void {
    super.connectedCallback();
    this.bench.addEventListener('bench', this.redraw);
    this.bench.addEventListener('settled', this.settled);
    this.notes.addEventListener('stored', this.spoken);
    this.finder.addEventListener('sight', this.redraw);
    desk.addEventListener('changed', this.changed);
    document.addEventListener('keydown', this.key);
    this.finder.open();
    this.wakeLock.hold();
    void this.bench.refresh().then(() => { this.more ||= wasTyping(this.bench); });
    void this.askHead();
  }

  override disconnectedCallback(): void {
    this.bench.removeEventListener('bench', this.redraw);
    this.bench.removeEventListener('settled', this.settled);
    this.notes.removeEventListener('stored', this.spoken);
    this.finder.removeEventListener('sight', this.redraw);
    desk.removeEventListener('changed', this.changed);
    document.removeEventListener('keydown', this.key);
    this.series.stop();
    this.finder.close();
    this.wakeLock.release();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    return html`<div class="td" @click=${this.touched}>
      <div class="td-upper">${this.head()}
        <asf-sight .finder=${this.finder} .series=${this.series} .over=${this.laidOn()} @asf-shoot=${this.shoot}></asf-sight></div>
      <div class="td-lower">
        ${soFar(this.bench)}
        ${this.waiting()}
        <asf-strip .photos=${this.bench.isRecorded ? this.bench.view?.part?.photos ?? [] : []} .tiles=${[...this.bench.tiles.of(this.bench.part ?? '')]} .failed=${this.bench.tiles.failed} .tag=${this.tag} todo=${this.early && this.early === this.tag ? words().teardown.nothingYet(this.tag) : ''}></asf-strip>
        ${nameChips(this.bench, this.nameIt)}
        <div class="pair td-pair">
          <asf-hold-to-speak .begin=${this.beginNote} .slice=${this.slice} .safe=${this.notes.safe}></asf-hold-to-speak>
          <asf-button icon="stuck" word=${this.isStuck ? words().teardown.stuckNow : words().teardown.stuck} pressed=${this.isStuck ? 'true' : 'false'} @click=${this.stuck}></asf-button>
        </div>
        <div class="td-bottom">
          ${joinedCounter(this.bench)}
          <asf-shutter .word=${this.bench.isDeep ? words().teardown.slow(this.bench.queue.depth) : ''} @click=${this.shoot}></asf-shutter>
          <asf-next-tag number=${tagNumber(this.bench.following)} @click=${this.nextTag}></asf-next-tag>
        </div>
      </div>
      ${this.inputs()}
      <asf-dialog light .open=${this.more} .label=${html`<asf-tag number=${this.tag} size="52" in-hand></asf-tag>`} @asf-close=${() => { this.more = false; }}
        .body=${html`<asf-more .bench=${this.bench} @asf-camera=${() => { this.phoneCamera(); }} @asf-files=${() => { this.choose('files'); }}
          @asf-series=${(event: CustomEvent<{ every: number }>) => { this.more = false; this.series.start(event.detail.every); }}></asf-more>`}
        .actions=${html`<asf-primary small verb=${words().kit.done} icon="check" @click=${() => { this.more = false; }}></asf-primary>`}></asf-dialog>
    </div>`;
  }

  private get tag(): string {
    return tagNumber(this.bench.tag);
  }

  private get isStuck(): boolean {
    return this.bench.isRecorded && this.bench.view?.part?.record.values.stuck === true;
  }

  private get canSee(): boolean {
    return this.finder.sight === 'live' || this.finder.sight === 'starting' || this.finder.sight === 'asleep';
  }

  private head(): TemplateResult {
    const text = words().teardown;
    const line = this.bench.view?.assembly;
    const open = (this.bench.view?.open ?? []).filter(({ record }) => record.id !== line?.record.id).length;
    const torch = this.finder.torch === 'none' ? [] : [{ id: 'torch', word: text.torch, icon: 'torch' as const, pressed: this.finder.torch === 'on', label: text.torchName }];
    return html`<asf-head ink .name=${html`<a class="td-title" href="#/assemblies">${line ? line.record.values.name ?? words().assemblies.unnamed : text.noAssembly}</a>`}
      .second=${open > 0 ? text.moreOpen(open) : line ? this.jobName : text.nameAssembly}
      .cells=${[...torch, this.keeping.cell]} @asf-cell=${() => { void this.finder.turnTorch(); }}></asf-head>`;
  }

  private laidOn(): TemplateResult {
    const text = words().teardown;
    const side = sideInHand(this.bench);
    const kind = this.bench.shotKind;
    return html`${side ? html`<asf-side class="td-side" big side=${side} end=${endOf(this.bench.view?.assembly?.record.values.name ?? '')} driver=${this.driver}></asf-side>` : nothing}
      ${this.tag ? html`<asf-tag class="td-tag" number=${this.tag} size="88" in-hand string></asf-tag>` : nothing}
      <div class="td-plates"><asf-caution-plate .assembly=${this.bench.view?.assembly?.record.id}></asf-caution-plate>${kind === 'plain' ? nothing : html`<span class="td-kind">${text.more_.kindWord[kind]}</span>`}
      <button type="button" class="td-plate" aria-label=${text.moreName(this.tag)} @click=${() => { this.more = true; }}><asf-icon name="list"></asf-icon><span>${text.more}</span></button></div>`;
  }

  private waiting(): TemplateResult | typeof nothing {
    if (!this.bench.isWaiting || this.isChoosing) return nothing;
    const text = words().teardown;
    return html`<asf-message .happened=${text.waitingTitle(this.tag)} .safe=${text.waitingSafe} .todo=${text.waitingTodo}>
      <div class="pair"><asf-button icon="camera" word=${text.waitingAgain} @click=${() => { this.phoneCamera(); }}></asf-button>
      <asf-button word=${text.waitingLeave} @click=${() => { this.bench.wait(false); }}></asf-button></div></asf-message>`;
  }

  private inputs(): TemplateResult {
    return html`<input class="td-camera" hidden type="file" accept=${CAMERA} capture="environment" @change=${this.taken} @cancel=${this.cancelled}>
      <input class="td-files" hidden type="file" multiple accept=${CHOOSE} @change=${this.taken}>`;
  }

  private isChoosing = false;
  /** Taps that came while too many photos were still being saved: each is taken as soon as there is room. */
  private owed = 0;

  private readonly shoot = (): void => {
    if (this.more) return;
    if (this.bench.isDeep) { this.owed += 1; return; }
    if (!this.canSee) { this.otherWay(); return; }
    const shot = this.finder.shoot();
    if (!shot) { void this.finder.start(); return; }
    this.sight?.blink();
    this.bench.photo(shot);
  };

  private readonly nameIt = async (): Promise<void> => {
    this.more = true;
    await this.updateComplete;
    await this.querySelector('asf-dialog')?.updateComplete;
    await this.querySelector('asf-more')?.focusName();
  };

  private readonly nextTag = (): void => {
    const text = words().teardown;
    this.finder.stir();
    if (!this.bench.nextTag()) {
      this.early = this.tag;
      say(text.nothingYet(this.tag));
      return;
    }
    this.early = '';
    this.notes.forget();
    say(text.nowInHand(this.tag));
  };

  private readonly stuck = (): void => {
    const next = !this.isStuck;
    this.bench.write([{ stuck: next }, { off: !next }], ({ ok }) => {
      if (ok) say(next ? words().teardown.stuckSaid(this.tag) : words().teardown.freeSaid(this.tag));
    });
  };

  private readonly beginNote = (): string | null => {
    this.finder.stir();
    return this.notes.begin();
  };

  private readonly slice = (slice: Slice): void => { this.notes.keep(slice); };

  private readonly spoken = (): void => {
    say(words().speak.stored);
    this.requestUpdate();
  };

  // With no sight the shutter opens the phone's own camera, or the chooser where there is no camera.
  private otherWay(): void {
    if (this.finder.sight === 'none') this.choose('files');
    else if (this.bench.queue.depth > 0) say(words().teardown.more_.waitSaving);
    else this.phoneCamera();
  }

  private phoneCamera(): void {
    this.bench.wait(true);
    this.choose('camera');
  }

  private choose(which: 'camera' | 'files'): void {
    this.isChoosing = true;
    this.querySelector<HTMLInputElement>(`.td-${which}`)?.click();
  }

  private readonly taken = (event: Event): void => {
    const { target } = event;
    this.isChoosing = false;
    if (!(target instanceof HTMLInputElement)) return;
    for (const file of target.files ?? []) this.bench.photo(shotOf(file));
    target.value = '';
    this.more = false;
    this.bench.wait(false);
  };

  private readonly cancelled = (): void => {
    this.isChoosing = false;
    this.bench.wait(false);
  };

  private readonly key = (event: KeyboardEvent): void => {
    const isFree = event.target === document.body || (event.target instanceof Element && event.target.closest('a, button, input, textarea, select, [contenteditable], dialog, label') === null);
    if (!isFree || event.repeat || event.ctrlKey || event.metaKey || event.altKey || (event.key !== ' ' && event.key !== 'Enter')) return;
    event.preventDefault();
    this.shoot();
  };

  // After a tap the focus waits on the shutter, where Space and Enter of a wireless one take the next photo.
  private readonly touched = (event: MouseEvent): void => {
    this.finder.stir();
    if (event.detail === 0 || !(event.target instanceof Element) || event.target.closest('dialog, asf-head, input, asf-strip a')) return;
    this.querySelector('asf-shutter')?.focus({ preventScroll: true });
  };

  private readonly settled = (event: Event): void => {
    if (!(event instanceof CustomEvent)) return;
    const { ok, problems } = (event as CustomEvent<{ ok: boolean; problems: [] }>).detail;
    const text = words().teardown;
    if (!ok) {
      say(text.photoFailed);
      if (problems.length > 0) document.dispatchEvent(new CustomEvent('asf-refused', { detail: { problems } }));
      return;
    }
    // Refused, with a complaint, in a page that nobody has touched yet: the picture came from the phone's own camera.
    if (navigator.userActivation?.hasBeenActive !== false) navigator.vibrate?.(15);
  };

  private readonly redraw = (): void => {
    if (this.owed > 0 && !this.bench.isDeep) {
      this.owed -= 1;
      this.shoot();
    }
    this.requestUpdate();
  };

  private readonly changed = (): void => { void this.bench.refresh(); };

  private async askHead(): Promise<void> {
    const view = await desk.ask({ ask: 'head' });
    if (view.view !== 'head') return;
    this.driver = view.settings.driver_side;
    this.jobName = view.job.values.name ?? words().first.unnamed;
  }
}

function shotOf(file: File): Shot {
  return { small: Promise.resolve(file), bytes: readPicture(file) };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-teardown': TeardownPlace } }
