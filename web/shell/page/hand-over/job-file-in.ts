import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { desk, type DryRun, type MergeReport } from '../../bridge/desk';
import type { ProblemsView } from '../../bridge/protocol';
import { openJob } from '../frame/start';
import '../kit/button';
import '../kit/icon';
import '../kit/leader';
import '../kit/message';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { bytes, number } from '../words/format';
import './preparing';
import { whyUnreadable, type Unreadable } from './why-unreadable';

type Step = 'idle' | 'reading' | 'shown' | 'bringing' | 'done' | 'unreadable' | 'broken';

/** A job file on its way in: first what it holds, then, by a second tap, brought in, then what came of it. */
@customElement('asf-job-file-in')
export class JobFileIn extends LightElement {
  @state() private step: Step = 'idle';
  @state() private dry: DryRun | undefined;
  @state() private report: MergeReport | undefined;
  @state() private conflicts = 0;
  @state() private why: Unreadable = { why: 'other', detail: '' };
  @state() private done = 0;
  @state() private all = 0;
  private file: File | undefined;
  private stop = new AbortController();

  override disconnectedCallback(): void {
    this.stop.abort();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().handOver.bring;
    return html`<asf-section .label=${say.title}><div class="bring" aria-live="polite">${this.now()}</div></asf-section>`;
  }

  private now(): TemplateResult | typeof nothing {
    const say = words().handOver.bring;
    switch (this.step) {
      case 'idle': return html`<p class="reckoned">${say.lead}</p>${this.picker(say.pick)}`;
      case 'reading': return html`<asf-preparing stops .what=${say.reading} @asf-stop=${() => { this.stop.abort(); this.step = 'idle'; }}></asf-preparing>`;
      case 'shown': return this.dry ? this.preview(this.dry) : nothing;
      case 'bringing': return html`<asf-preparing .what=${say.bringing} .done=${this.done} .all=${this.all}></asf-preparing>`;
      case 'done': return this.report ? this.reported(this.report) : nothing;
      case 'unreadable': return html`${message(say.unreadable(this.why))}${this.picker(say.another)}`;
      case 'broken': return html`${message(say.partFailed(this.why))}<asf-button icon="rotate" word=${say.go} @click=${this.bring}></asf-button>${this.picker(say.another)}`;
    }
  }

  private picker(word: string): TemplateResult {
    return html`<label class="second-button bring-pick"><input class="unseen" type="file" accept=".asfound,.zip,.txt,application/zip,application/octet-stream,text/plain" @change=${this.picked}><asf-icon name="bring"></asf-icon><span>${word}</span></label>`;
  }

  private preview(dry: DryRun): TemplateResult {
    const say = words().handOver.bring;
    const same = desk.current() !== null && !dry.other_job;
    return html`<p class="title">${dry.name || words().parts.noName}</p>
      <p class="reckoned">${same ? say.sameJob : say.otherJob} ${dry.entries_new + dry.photos_new === 0 ? say.nothingNew : nothing}</p>
      <div>${line(say.newParts, dry.parts_new)}${line(say.newEntries, dry.entries_new)}${line(say.known, dry.entries_here)}
        <asf-leader .label=${say.newPhotos} .value=${dry.photos_new ? `${number(dry.photos_new)}, ${bytes(dry.bytes_new)}` : number(0)}></asf-leader>
        ${line(say.photosHere, dry.photos_here)}${line(say.missing, dry.missing.length)}${line(say.conflicts, dry.conflicts_new)}</div>
      ${dry.problems.map((problem) => html`<p class="reckoned">${words().problems.sentence(problem)}</p>`)}
      <div class="primary-and-second"><asf-primary small .verb=${say.go} icon="bring" @click=${this.bring}></asf-primary>
        <asf-button word=${say.leave} @click=${() => { this.step = 'idle'; }}></asf-button></div>`;
  }

  private reported(report: MergeReport): TemplateResult {
    const say = words().handOver.bring;
    return html`<p class="title">${say.done}</p>
      <div>${report.job === desk.current() ? line(say.touched, report.touched.length) : line(say.newEntries, this.dry?.entries_new ?? 0)}${line(say.photosIn, report.photos)}${line(say.conflicts, this.conflicts)}</div>
      ${report.damaged.length ? html`<p class="reckoned">${say.damaged(report.damaged.length)}</p>` : nothing}
      <div class="pair">${report.job === desk.current() ? nothing : html`<asf-button icon="next" word=${say.openIt} @click=${() => { void this.open(report.job); }}></asf-button>`}
        ${this.conflicts ? html`<asf-button icon="caution" word=${say.toProblems} href="#/problems"></asf-button>` : nothing}${this.picker(say.another)}</div>`;
  }

  private readonly picked = async (event: Event): Promise<void> => {
    if (!(event.target instanceof HTMLInputElement)) return;
    const [file] = event.target.files ?? [];
    event.target.value = '';
    if (!file) return;
    this.file = file;
    this.stop = new AbortController();
    const { signal } = this.stop;
    this.step = 'reading';
    try {
      this.dry = await desk.readJobFile(file, signal);
      this.step = 'shown';
    } catch (error) {
      if (signal.aborted) return;
      this.why = whyUnreadable(error);
      this.step = 'unreadable';
    }
  };

  private readonly bring = async (): Promise<void> => {
    const { file, dry } = this;
    if (!file || !dry) return;
    [this.step, this.done, this.all] = ['bringing', 0, 0];
    try {
      const report = await desk.bringIn(file, dry, (done, all) => { [this.done, this.all] = [done, all]; });
      this.report = report;
      this.conflicts = report.job === desk.current() ? await openConflicts() : 0;
      if (report.trouble) this.why = whyUnreadable({ failure: report.trouble });
      this.step = report.trouble ? 'broken' : 'done';
    } catch (error) {
      this.why = whyUnreadable(error);
      this.step = 'broken';
    }
  };

  private async open(job: string): Promise<void> {
    if (await openJob(job)) location.hash = '#/parts';
  }
}

async function openConflicts(): Promise<number> {
  const view = await desk.ask({ ask: 'problems' });
  return view.view === 'problems' ? (view satisfies ProblemsView).conflicts.length : 0;
}

function line(label: string, value: number): TemplateResult {
  return html`<asf-leader .label=${label} .value=${number(value)}></asf-leader>`;
}

function message({ happened, safe, todo }: { happened: string; safe: string; todo: string }): TemplateResult {
  return html`<asf-message kind="alert" .happened=${happened} .safe=${safe} .todo=${todo}></asf-message>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-job-file-in': JobFileIn } }
