import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Id, RefitStepView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { Feedback } from '../camera/feedback';
import { WakeLock } from '../camera/wake-lock';
import { carryOut } from '../carry-out';
import '../cautions/cautions';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/icon';
import '../kit/key';
import '../kit/primary';
import '../kit/section';
import '../kit/side';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';
import { endOf } from '../teardown/side-of';
import { today } from '../today';
import { words } from '../words';
import './after-photo';
import { forgetStep, rememberStep } from './last-step';
import { lackLines } from './lacks';
import './lacks-mended';
import './step-body';
import './step-hardware';
import './step-photo';
import type { StepPhoto } from './step-photo';
import { ticking, waitsForHeight, type Tick } from './tick';

/** What was ticked last, and with which entry. */
export interface Ticked { entry: string; part: Id; assembly: Id | undefined }

/** One step: its photos, its hardware, how tight; ticked, and on to the next. Tells `asf-step` with where to go, `asf-ticked` with what was. */
@customElement('asf-refit-step')
export class RefitStep extends LightElement {
  @property() partId = '';
  /** As the address has it. */
  @property() assembly = '';
  /** The list of steps stands beside it. */
  @property({ type: Boolean }) beside = false;
  @state() private asking: Tick | null = null;
  @state() private keys = false;
  @query('asf-step-photo') private photo!: StepPhoto | null;

  private readonly live = new Live(this, 'refit-step', () => (this.partId ? { ask: 'refit-step', part: this.partId, today: today() } : null));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);
  private readonly wakeLock = new WakeLock();
  private readonly feedback = new Feedback();
  private busy = false;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.pressed);
    this.wakeLock.hold();
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.pressed);
    this.wakeLock.release();
    this.feedback.close();
    super.disconnectedCallback();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('partId')) return;
    this.asking = null;
    if (this.hasUpdated) this.live.anew();
  }

  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    const { view } = this;
    if (!view) return;
    // Whoever comes back later, by whatever way, is offered this step.
    if (view.step.state !== 'fitted') rememberStep({ assembly: view.assembly ?? 'none', part: view.record.id });
    // Moved to another assembly, or come to by way of one: the address follows.
    if ((view.assembly ?? 'none') !== this.assembly) this.to(view.record.id, view.assembly);
  }

  override render(): TemplateResult {
    const say = words().refit;
    const back = this.assembly === 'none' || !this.assembly ? '#/refit/none' : `#/refit/${this.assembly}`;
    if (this.live.nothing) return html`<asf-head .name=${say.title} back="#/refit"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="refit" word=${say.gone.go} href="#/refit"></asf-button></asf-empty></div>`;
    const { view } = this;
    if (!view) return html`<asf-head .name=${say.title} back=${back}></asf-head>`;
    const here = `${back}?step=${this.partId}`;
    return html`${this.bar(view, back)}${this.boxes(view, back)}
      <asf-step-photo .view=${view} here=${here}></asf-step-photo>
      <div class="body rf-step-body">
        ${this.said(view, here)}
        <asf-cautions compact step="refit" .partId=${this.partId}></asf-cautions>
        <asf-step-hardware .view=${view} .units=${this.head.view?.settings.units ?? 'metric'} here=${here}></asf-step-hardware>
        ${view.step.lacks.length && view.step.state !== 'fitted' ? html`<asf-lacks-mended .view=${view} here=${here}></asf-lacks-mended>` : nothing}
        <asf-step-body .view=${view}></asf-step-body>
        ${this.otherwise(view)}
      </div>
      <div class="foot rf-foot">${this.foot(view)}</div>
      ${this.dialogs(view)}`;
  }

  private get view(): RefitStepView | undefined {
    const { view } = this.live;
    return view?.record.id === this.partId ? view : undefined;
  }

  private bar(view: RefitStepView, back: string): TemplateResult {
    const say = words().refit;
    const { side, name } = view.step.line;
    const assembly = view.assembly_name || say.outside.title;
    const second = [say.step(view.number, view.of), view.step.state === 'tried' ? say.onStep.trial : say.onStep.finalFit, view.step.paint ? say.paints[view.step.paint] : ''].filter(Boolean).join(' · ');
    const plan = side ? html`<asf-side side=${side} end=${endOf(assembly)} driver=${this.head.view?.settings.driver_side ?? 'right'}></asf-side>` : nothing;
    return html`<asf-head .name=${html`${assembly}<span class="unseen">, ${say.step(view.number, view.of)}: ${name || words().parts.noName}</span>`} .second=${second} .side=${plan} back=${this.beside ? nothing : back} .cells=${side || this.beside ? [] : [this.keeping.cell]}></asf-head>`;
  }

  /** A box for each step, filled when it is on; together the way to all of them. */
  private boxes(view: RefitStepView, back: string): TemplateResult {
    const on = view.states.filter((state) => state === 'fitted').length;
    return html`<a class="rf-boxes ${view.of > 40 ? 'rf-boxes-many' : ''}" href=${back} aria-label=${words().refit.onStep.boxes(view.number, view.of, on)}>${view.states.map((state, i) => html`<span class="rf-box rf-box-${state} ${i + 1 === view.number ? 'rf-box-now' : ''}"></span>`)}</a>`;
  }

  private said({ step, record }: RefitStepView, here: string): TemplateResult {
    const say = words().refit;
    const { line } = step;
    const other = step.brings_new ? (line.route === 'donor' ? say.assembly.fromDonor : say.assembly.isNew) : '';
    const state = step.state === 'fitted' ? say.onStep.isOn : step.state === 'tried' ? say.onStep.isTried : '';
    const waits = step.state === 'waiting' && step.lacks.length ? say.onStep.waits(step.lacks.length) : '';
    return html`<div class="rf-said"><h2 class="title"><a href=${openedFrom(`#/part/${record.id}`, here)}>${line.name || words().parts.noName}${line.quantity > 1 ? ` × ${line.quantity}` : ''}</a></h2>
      ${other || state || waits ? html`<p>${waits ? html`<b><asf-icon name="timer" size="20"></asf-icon> ${waits}</b> ` : nothing}${state ? html`<b><asf-icon name=${step.state === 'fitted' ? 'proved' : 'not-proved'} size="20"></asf-icon> ${state}</b> ` : nothing}<span class="second">${other}</span></p>` : nothing}</div>`;
  }

  private otherwise(view: RefitStepView): TemplateResult {
    const say = words().refit.onStep;
    const { state } = view.step;
    const isOn = state === 'fitted';
    return html`<asf-section .label=${say.more}><div class="pair">
      ${isOn ? html`<asf-button icon="undo" word=${say.notOn} @click=${() => { void this.tick('not-on'); }}></asf-button>` : html`<asf-button icon="loose" word=${say.finger} key="F" @click=${() => { this.wants('finger-tight'); }}></asf-button>`}
      ${state === 'tried' ? html`<asf-button icon="check" word=${say.tightened} @click=${() => { this.wants('tightened'); }}></asf-button>` : isOn ? nothing : html`<asf-button icon="not-proved" word=${say.tryIt} @click=${() => { void this.tick('tried'); }}></asf-button>`}
      <asf-after-photo .partId=${this.partId} .last=${Math.max(0, ...view.photos.map(({ record }) => record.values.order ?? 0))}></asf-after-photo></div></asf-section>`;
  }

  /** What the record says stands in the way is not what is proposed next: then Later is, and the tick stands beside it. */
  private foot(view: RefitStepView): TemplateResult {
    const say = words().refit.onStep;
    const later = { word: say.later, act: () => { this.later(); } };
    switch (view.step.state) {
      case 'fitted': return html`<asf-primary verb=${view.next_open ? say.next : say.look} icon="next" key="L" @click=${() => { this.later(); }}></asf-primary>`;
      case 'tried': return pairOf(html`<asf-primary verb=${say.offAgain} icon="undo" key="D" @click=${() => { void this.tick('off-again'); }}></asf-primary>`, later);
      case 'waiting': return html`<div class="primary-and-second rf-swapped"><asf-button column icon="check" word=${say.tightened} key="D" @click=${() => { this.wants('tightened'); }}></asf-button>
        <asf-primary verb=${say.later} icon="next" key="L" @click=${() => { this.later(); }}></asf-primary></div>`;
      case 'ready': return pairOf(html`<asf-primary verb=${say.tightened} icon="check" key="D" @click=${() => { this.wants('tightened'); }}></asf-primary>`, later);
    }
  }

  private dialogs(view: RefitStepView): TemplateResult {
    const say = words().refit.onStep;
    const { asking } = this;
    return html`<asf-dialog .open=${asking !== null} .label=${say.anyway.title} .body=${asking ? html`<p class="reckoned">${say.anyway.lead}</p>${lackLines(view.step.lacks, 12, () => undefined)}` : nothing}
        .actions=${html`<asf-button word=${say.anyway.leave} @click=${() => { this.asking = null; }}></asf-button><asf-primary small verb=${say.anyway.go} icon="check" @click=${() => { const tick = this.asking; this.asking = null; if (tick) void this.tick(tick); }}></asf-primary>`}
        @asf-close=${() => { this.asking = null; }}></asf-dialog>
      <asf-dialog .open=${this.keys} .label=${say.keysTitle} .body=${html`<dl class="key-list">${Object.entries(say.keys).map(([key, what]) => html`<div><dt><asf-key name=${key}></asf-key></dt><dd>${what}</dd></div>`)}</dl>`} @asf-close=${() => { this.keys = false; }}></asf-dialog>`;
  }

  /** Ticked at once; what stands in the way is asked about first. */
  private wants(tick: Tick): void {
    const { view } = this;
    if (!view) return;
    if (view.step.lacks.length > 0) this.asking = tick;
    else void this.tick(tick);
  }

  private async tick(tick: Tick): Promise<void> {
    const { view } = this;
    if (!view || this.busy) return;
    const command = ticking(view, tick);
    if (command.do === 'all' && command.commands.length === 0) return;
    this.busy = true;
    const tag = `${tagFigures(view.step.line.tag)} ${view.step.line.name}`.trim();
    const { ok, entry } = await carryOut(command, words().refit.onStep.said[waitsForHeight(view, tick) ? 'at-height' : tick](tag));
    this.busy = false;
    // Felt and heard only once it is stored: with gloves on nobody looks at the screen first.
    this.feedback.give(ok ? 'taken' : 'wrong');
    if (!ok) return;
    this.tell<Ticked>('asf-ticked', { entry: entry ?? '', part: view.record.id, assembly: view.assembly });
    // Whoever has gone on by hand meanwhile is not sent past another step.
    if ((tick === 'tightened' || tick === 'finger-tight') && this.partId === view.record.id) this.later();
  }

  /** On to the next that is not on; after the last one to the list. */
  private later(): void {
    const { view } = this;
    if (!view) return;
    const next = view.next_open && view.next_open !== view.record.id ? view.next_open : '';
    if (!next) forgetStep();
    this.to(next, view.assembly);
  }

  private to(part: Id, assembly: Id | undefined): void {
    this.tell('asf-step', { part, assembly });
  }

  private turn(to: Id | undefined): void {
    if (to) this.to(to, this.view?.assembly);
  }

  private readonly pressed = (event: KeyboardEvent): void => {
    const { key, target } = event;
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.repeat || document.querySelector('dialog[open]')) return;
    if (target instanceof HTMLElement && target.matches('input, textarea, select')) return;
    if (this.carriesOut(key)) event.preventDefault();
  };

  private carriesOut(key: string): boolean {
    const { view } = this;
    if (!view) return false;
    switch (key.length === 1 ? key.toLowerCase() : key) {
      // Not the space bar: whoever scrolls with it must not tick.
      case 'd': if (view.step.state === 'fitted') this.later(); else if (view.step.state === 'tried') void this.tick('off-again'); else this.wants('tightened'); return true;
      case 'f': if (view.step.state !== 'fitted') this.wants('finger-tight'); return true;
      case 'l': this.later(); return true;
      case 'n': this.turn(view.next); return true;
      case 'p': this.turn(view.previous); return true;
      case 'ArrowLeft': this.photo?.turn(-1); return true;
      case 'ArrowRight': this.photo?.turn(1); return true;
      case '?': this.keys = true; return true;
      default: return false;
    }
  }
}

function pairOf(primary: TemplateResult, { word, act }: { word: string; act: () => void }): TemplateResult {
  return html`<div class="primary-and-second">${primary}<asf-button column icon="next" word=${word} key="L" @click=${act}></asf-button></div>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-refit-step': RefitStep } }
