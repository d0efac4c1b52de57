import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Id, RefitStepsView, StepLine } from '../../bridge/protocol';
import { desk } from '../../bridge/desk';
import { KeepingWord } from '../frame/keeping-word';
import { go } from '../frame/start';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/icon';
import '../kit/section';
import '../kit/side';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { partRow } from '../parts/part-row';
import { Pictures } from '../pictures';
import { endOf } from '../teardown/side-of';
import { today } from '../today';
import { words } from '../words';
import './assembly-about';
import { partBoxes, progressWords, standLine } from './assembly-row';
import { lackWords } from './lacks';

/** The steps of one assembly in their order, and what is to be said of all of it. */
@customElement('asf-refit-assembly')
export class RefitAssemblyPage extends LightElement {
  @property() assembly: Id = '';
  /** The step in hand beside it; `next`: the first that can be done is to be opened. */
  @property() current = '';
  /** Wide enough for what is said of the assembly to stand beside its steps. */
  @property({ type: Boolean }) panes = false;
  /** The steps alone: one of them stands open beside. */
  @property({ type: Boolean }) lists = false;
  private readonly live = new Live(this, 'refit-steps', () => (this.assembly ? { ask: 'refit-steps', assembly: this.assembly, today: today() } : null));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly pictures = new Pictures(this);
  private readonly keeping = new KeepingWord(this);
  /** Neither an assembly nor a part of this id was off. */
  @state() private gone = '';
  private sought = '';
  private followed = '';

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('assembly') && this.hasUpdated) this.live.anew();
  }

  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    const { view } = this;
    if (view && this.current === 'next') this.goNext(view);
    this.follow();
    if (this.live.nothing && this.sought !== this.assembly) void this.seekPart();
  }

  override render(): TemplateResult {
    const say = words().refit;
    if (this.live.nothing && this.gone === this.assembly) return html`<asf-head .name=${say.title} back="#/refit"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="refit" word=${say.gone.go} href="#/refit"></asf-button></asf-empty></div>`;
    const { view } = this;
    if (!view) return html`<asf-head .name=${say.title} back="#/refit"></asf-head>`;
    const { assembly } = view;
    const plan = assembly.side ? html`<asf-side side=${assembly.side} end=${endOf(assembly.name)} driver=${this.head.view?.settings.driver_side ?? 'right'}></asf-side>` : nothing;
    const steps = html`${this.lists ? nothing : html`<div class="rf-summary">${standLine(assembly)}${partBoxes(assembly)}<p class="second">${progressWords(assembly)}</p></div>`}
      <asf-section .label=${say.assembly.steps} .count=${say.parts(view.steps.length)}><ol class="rf-steps">${view.steps.map((step, i) => html`<li>${this.step(step, i + 1)}</li>`)}</ol></asf-section>`;
    const about = this.lists ? nothing : html`<asf-assembly-about .view=${view} .units=${this.head.view?.settings.units ?? 'metric'}></asf-assembly-about>`;
    return html`<asf-head .name=${assembly.name || say.noName} .second=${this.lists ? progressWords(assembly) : say.title} .side=${plan} back="#/refit" .cells=${assembly.side || this.lists ? [] : [this.keeping.cell]}></asf-head>
      ${this.panes && !this.lists ? html`<div class="body rf-two"><div>${steps}</div><div>${about}</div></div>` : html`<div class="body">${steps}${about}</div>`}
      ${this.lists ? html`<div class="foot rf-foot-list"><asf-button icon="list" word=${say.assembly.about} href=${`#/refit/${this.assembly}`}></asf-button></div>` : this.foot(view)}`;
  }

  /** The step in hand stays in sight of the list beside it. */
  private follow(): void {
    const now = this.querySelector('.rf-step-now');
    if (!this.lists || !now || this.followed === this.current) return;
    this.followed = this.current;
    now.scrollIntoView({ block: 'nearest' });
  }

  private get view(): RefitStepsView | undefined {
    const { view } = this.live;
    return view?.assembly.id === this.assembly ? view : undefined;
  }

  private step(step: StepLine, number: number): TemplateResult {
    const say = words().refit;
    const { line, state, lacks, paint, without_order } = step;
    const [lack] = lacks;
    const said = [say.stepStates[state], step.brings_new ? (line.route === 'donor' ? say.assembly.fromDonor : say.assembly.isNew) : '', paint ? say.paints[paint] : '', without_order ? say.assembly.withoutOrder : ''].filter(Boolean);
    return html`<div class="rf-step ${line.id === this.current ? 'rf-step-now' : ''}"><span class="rf-number" aria-hidden="true">${number}</span>
      <div class="rf-step-row">${partRow(line, { picture: line.photo ? this.pictures.small(line.photo) : '', href: `#/refit/${this.assembly}?step=${line.id}`, current: line.id === this.current })}
      ${state === 'fitted' && said.length === 1 ? nothing : html`<p class="rf-step-said"><asf-icon name=${STATE_ICONS[state]} size="20"></asf-icon><span>${said.join(' · ')}${lack && state !== 'fitted' ? html`<br><span class="second">${lackWords(lack, false)}${lacks.length > 1 ? ` ${say.lacks.more(lacks.length - 1)}` : ''}</span>` : nothing}</span></p>`}</div></div>`;
  }

  private foot({ assembly, steps }: RefitStepsView): TemplateResult {
    const say = words().refit;
    const next = nextOf(steps);
    if (!next) return html`<div class="foot"><a class="cut primary rf-go" href=${assembly.state === 'refitted' ? '#/refit' : '#/refit/loose'}><span class="primary-verb">${say.assembly.allOn}</span><span class="primary-cost">${say.onStep.all}</span></a></div>`;
    const at = steps.indexOf(next) + 1;
    return html`<div class="foot"><a class="cut primary rf-go" href=${`#/refit/${assembly.id}?step=${next.line.id}`}><span class="primary-verb">${assembly.fitted > 0 ? say.goOn : say.begin}</span><span class="primary-cost">${say.assembly.toStep(at, next.line.name || words().parts.noName)}</span></a></div>`;
  }

  private goNext({ steps }: RefitStepsView): void {
    const next = nextOf(steps);
    go(next ? `#/refit/${this.assembly}?step=${next.line.id}` : `#/refit/${this.assembly}`, true);
  }

  /** What is no assembly may be a part: then its step is meant. */
  private async seekPart(): Promise<void> {
    const id = this.assembly;
    this.sought = id;
    const step = await desk.ask({ ask: 'refit-step', part: id, today: today() }).catch(() => null);
    if (id !== this.assembly) return;
    if (step?.view === 'refit-step') go(`#/refit/${step.assembly ?? 'none'}?step=${id}`, true);
    else this.gone = id;
  }
}

/** Each state its shape; the word stands beside it. */
const STATE_ICONS = { fitted: 'proved', tried: 'not-proved', ready: 'next', waiting: 'timer' } as const;

/** The first that can be done; else the first that is not on. */
function nextOf(steps: readonly StepLine[]): StepLine | undefined {
  return steps.find(({ state }) => state === 'ready') ?? steps.find(({ state }) => state !== 'fitted');
}

declare global { interface HTMLElementTagNameMap { 'asf-refit-assembly': RefitAssemblyPage } }
