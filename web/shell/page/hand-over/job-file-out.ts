import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { desk, type JobFileMade } from '../../bridge/desk';
import { carryOut } from '../carry-out';
import '../kit/message';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { words } from '../words';
import { failure } from './list-out';
import { paperWords } from './paper-words';
import './prepared';
import './preparing';

/** The whole job as one file: prepared first, handed on by a second tap. */
@customElement('asf-job-file-out')
export class JobFileOut extends LightElement {
  @state() private busy = false;
  @state() private done = 0;
  @state() private all = 0;
  @state() private file: File | undefined;
  /** Photos and sounds that could not be put into the file. */
  @state() private missing = 0;
  @state() private failed = '';
  @state() private stopped = false;
  private stop = new AbortController();
  /** When it was begun, and the entries that are in it. */
  private began = 0;
  private held: JobFileMade['held'] = [];
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override disconnectedCallback(): void {
    this.stop.abort();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().handOver;
    const { view } = this.head;
    return html`<asf-section .label=${say.file.title} .count=${view ? say.file.holds(view.photos, view.entries) : ''}>
      <p class="reckoned">${say.file.out} ${say.file.warn}</p>
      ${this.busy ? html`<asf-preparing stops .what=${say.preparing(say.file.title)} .done=${this.done} .all=${this.all} @asf-stop=${() => { this.stop.abort(); }}></asf-preparing>` : nothing}
      ${this.file ? html`<asf-prepared asks .file=${this.file} @asf-again=${this.prepare} @asf-left=${this.left}></asf-prepared>` : nothing}
      ${this.file && this.missing > 0 ? html`<asf-message kind="alert" .happened=${say.file.missing(this.missing).happened} .safe=${say.file.missing(this.missing).safe} .todo=${say.file.missing(this.missing).todo}></asf-message>` : nothing}
      ${!this.busy && !this.file ? html`<asf-primary small .verb=${words().safeKeeping.make} icon="file" @click=${this.prepare}></asf-primary>` : nothing}
      ${this.stopped ? html`<p role="status">${say.stopped}</p>` : nothing}
      ${this.failed ? failure(this.failed) : nothing}</asf-section>`;
  }

  /** Also called from outside, by the place Safe keeping. */
  readonly prepare = async (): Promise<void> => {
    this.stop = new AbortController();
    const { signal } = this.stop;
    this.began = Date.now();
    [this.busy, this.file, this.failed, this.stopped, this.done, this.all] = [true, undefined, '', false, 0, 0];
    try {
      const made = await desk.prepareJobFile((done, all) => { [this.done, this.all] = [done, all]; }, paperWords(), signal);
      [this.file, this.missing, this.held] = [made.file, made.missing, made.held];
    } catch (error) {
      if (signal.aborted) this.stopped = true;
      else this.failed = error instanceof Error ? error.message : String(error);
    } finally {
      this.busy = false;
    }
  };

  /** Only now does a file exist outside; it holds what there was when it was begun. */
  private readonly left = async (): Promise<void> => {
    const job = this.head.view?.job.id;
    if (job) await carryOut({ do: 'change', ids: [job], changes: [{ handed_out: this.began }, { held: this.held }] });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-job-file-out': JobFileOut } }
