import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, type JobLine } from '../../bridge/desk';
import { OfflineReady } from '../frame/offline';
import { go, followVocabulary, openJob } from '../frame/start';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/message';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import '../styles/first.css';
import { words } from '../words';
import { moment } from '../words/format';
import { cover } from './cover';
import { canInstall, install, installing, mustInstallFirst } from './install';
import { isSample, openSample, type NotOpened } from './sample-job';

const NAME = 'first:name';

/** The first screen: start a job, open one, bring one in, look at the sample. */
@customElement('asf-place-first')
export class FirstPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private jobs: readonly JobLine[] | null = null;
  @state() private naming = journal.typedBefore(NAME) !== null;
  @state() private name = journal.typedBefore(NAME) ?? '';
  @state() private error = '';
  @state() private busy = false;
  @state() private inTab = mustInstallFirst();
  @state() private notOpened = false;
  @state() private noSample: NotOpened = null;
  @state() private sampling: { done: number; of: number } | null = null;

  private readonly offline = new OfflineReady(this);

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('changed', this.look);
    installing.addEventListener('offered', this.redraw);
    void this.look();
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('changed', this.look);
    installing.removeEventListener('offered', this.redraw);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const text = words().first;
    const jobs = this.jobs ?? [];
    return html`<div class="first">
      ${cover(jobs.length > 0 || this.naming)}
      <div class="body first-body">
        ${this.inTab ? this.installFirst() : nothing}
        <h1 class="first-title" tabindex="-1">${text.title}</h1>
        <p class="reckoned first-about">${text.about}</p>
        <p class="first-ready" data-ready=${this.offline.isReady ? 'yes' : 'no'}><asf-icon name=${this.offline.isReady ? 'kept' : 'bring'}></asf-icon>${this.offline.isReady ? words().frame.offline : words().frame.notOffline}</p>
        ${this.notOpened ? html`<asf-message kind="alert" .happened=${words().frame.openFailed} .todo=${words().frame.openFailedTodo}>
          <asf-button word=${words().frame.rescue} icon="bring" href="./rescue.html"></asf-button></asf-message>` : nothing}
        ${this.noSample ? this.sampleMissing(this.noSample) : nothing}
        ${jobs.length > 0 ? html`<asf-section .label=${text.jobs}>${jobs.map((job) => this.job(job))}</asf-section>` : nothing}
        <div class="first-do">
          ${this.naming ? this.form() : html`<asf-primary verb=${text.start} cost=${text.startCost} @click=${this.begin}></asf-primary>`}
          <div class="pair"><asf-button icon="vehicle" word=${this.sampling ? text.sample.opening(this.sampling) : text.sample.open} ?disabled=${this.sampling !== null} @click=${this.sample}></asf-button>
          <asf-button icon="file" word=${text.bringIn} href="#/hand-over"></asf-button>
          ${canInstall() ? html`<asf-button icon="bring" word=${text.install.offer} @click=${install}></asf-button>` : nothing}</div>
        </div>
      </div></div>`;
  }

  private job({ id, name, parts, photos, last }: JobLine): TemplateResult {
    const text = words().first;
    return html`<button type="button" class="first-job" @click=${() => { void this.open(id); }}>
      <span class="row-words"><span class="row-name">${name || text.unnamed}</span><span class="row-second">${isSample(id) ? html`<strong>${text.sample.mark}</strong> · ` : nothing}${text.jobCounts(parts, photos)}${last ? ` · ${moment(new Date(last))}` : ''}</span></span>
      <asf-icon name="next"></asf-icon></button>`;
  }

  private sampleMissing(why: Exclude<NotOpened, null>): TemplateResult {
    const { happened, safe, todo } = words().first.sample[why === 'not-fetched' ? 'notFetched' : 'notBroughtIn'];
    return html`<asf-message kind="alert" .happened=${happened} .safe=${safe} .todo=${todo}></asf-message>`;
  }

  private form(): TemplateResult {
    const text = words().first;
    return html`<form class="first-form" @submit=${this.start}>
      <asf-field label=${text.name} hint=${text.nameHint} error=${this.error} max="200" .value=${this.name} @input=${this.typing}></asf-field>
      <asf-primary kind="submit" verb=${text.begin} ?disabled=${this.busy}></asf-primary>
      <asf-button word=${text.cancel} @click=${this.leave}></asf-button></form>`;
  }

  private installFirst(): TemplateResult {
    const text = words().first.install;
    return html`<asf-message kind="alert" .happened=${text.happened} .safe=${text.safe} .todo=${text.todo}>
      <asf-button word=${text.anyway} @click=${() => { this.inTab = false; }}></asf-button></asf-message>`;
  }

  private readonly begin = async (): Promise<void> => {
    this.naming = true;
    await this.updateComplete;
    this.querySelector('asf-field')?.focus();
  };

  private readonly typing = (): void => {
    this.name = this.querySelector('asf-field')?.value ?? '';
    this.error = '';
    journal.typing(NAME, this.name);
  };

  private readonly leave = (): void => {
    journal.typed(NAME);
    Object.assign(this, { naming: false, name: '', error: '' });
  };

  private readonly start = async (event: Event): Promise<void> => {
    event.preventDefault();
    const name = this.name.trim();
    if (!name) { this.error = words().first.nameMissing; return; }
    if (this.busy) return;
    this.busy = true;
    try {
      const { ok, job } = await desk.start(name, { name });
      if (!ok) return;
      journal.typed(NAME);
      journal.at({ job: job ?? desk.current() });
      await followVocabulary();
      go('#/teardown');
    } finally {
      this.busy = false;
    }
  };

  private async open(job: string): Promise<void> {
    if (await openJob(job)) go('#/teardown');
    else this.notOpened = true;
  }

  private readonly sample = async (): Promise<void> => {
    if (this.sampling) return;
    [this.sampling, this.noSample] = [{ done: 0, of: 0 }, null];
    try {
      this.noSample = await openSample((done, of) => { this.sampling = { done, of }; });
      if (this.noSample === null) go('#/parts');
    } finally {
      this.sampling = null;
    }
  };

  private readonly look = async (): Promise<void> => {
    try {
      this.jobs = await desk.jobs();
    } catch {
      // The desk tells of trouble by itself.
      this.jobs ??= [];
    }
  };

  private readonly redraw = (): void => { this.requestUpdate(); };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-first': FirstPlace } }
