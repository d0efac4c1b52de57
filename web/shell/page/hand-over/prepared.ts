import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../kit/button';
import '../kit/icon';
import '../kit/message';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { say } from '../say';
import { words } from '../words';
import { share, waysOut } from './ways-out';

const BIG = 45e6;

/**
 * A finished file and the ways it can leave; each can be taken again. Tells `asf-left` when it was handed on, `asf-again` to prepare
 * anew. `asks`: where nobody can know whether it arrived, the person says so first.
 */
@customElement('asf-prepared')
export class Prepared extends LightElement {
  @property({ attribute: false }) file?: File;
  @property({ type: Boolean }) asks = false;
  /** Whether a saved file is where it should be: not asked yet, asked, answered. */
  @state() private arrived: 'open' | 'asked' | 'yes' | 'no' = 'open';
  @state() private said = '';
  @state() private failed = '';
  @state() private text = '';
  private address = '';

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('file')) return;
    this.drop();
    if (!this.file) return;
    this.address = URL.createObjectURL(this.file);
    say(`${words().handOver.readyWord} ${words().handOver.ready(this.file.name, this.file.size)}`);
  }

  override disconnectedCallback(): void {
    this.drop();
    super.disconnectedCallback();
  }

  override render(): TemplateResult | typeof nothing {
    const { file } = this;
    if (!file) return nothing;
    const say = words().handOver;
    const ways = waysOut(file);
    return html`<div class="prepared"><p class="prepared-name"><asf-icon name="file"></asf-icon><span><b>${say.readyWord}</b> ${say.ready(file.name, file.size)}</span></p>
      ${ways.share ? html`<asf-primary verb=${say.share} icon="share" @click=${() => { void this.share(ways.share); }}></asf-primary>` : nothing}
      ${ways.share && ways.renamed ? html`<p class="second">${say.renamed(ways.share.name)}</p>` : nothing}
      ${file.size > BIG && ways.share ? html`<p class="second">${say.bigFile}</p>` : nothing}
      ${ways.save === 'over' ? html`<asf-message .happened=${say.opensOver.happened} .safe=${say.opensOver.safe} .todo=${say.opensOver.todo}></asf-message>` : nothing}
      ${ways.save ? this.saveLink(file, !ways.share) : nothing}
      ${ways.save === 'over' && file.type.startsWith('text/csv') && 'clipboard' in navigator ? html`<asf-button icon="list" word=${say.copy} @click=${this.copy}></asf-button>` : nothing}
      ${this.question()}
      ${file.type.startsWith('text/csv') ? html`<asf-button icon="list" word=${this.text ? words().kit.close : say.look} @click=${this.look}></asf-button>` : nothing}
      ${this.text ? html`<pre class="prepared-text" tabindex="0" aria-label=${file.name}>${this.text}</pre>` : nothing}
      <p role="status">${this.said || nothing}</p>
      ${this.failed ? html`<asf-message kind="alert" .happened=${say.shareFailed(this.failed).happened} .safe=${say.shareFailed(this.failed).safe} .todo=${say.shareFailed(this.failed).todo}></asf-message>` : nothing}
      <asf-button compact plain icon="rotate" word=${say.again} @click=${() => { this.tell('asf-again', null); }}></asf-button></div>`;
  }

  private question(): TemplateResult | typeof nothing {
    if (this.arrived !== 'asked') return nothing;
    const say = words().handOver.arrived;
    return html`<asf-message .happened=${say.question} .safe=${say.why} .todo=${say.where}><div class="pair">
      <asf-button icon="check" word=${say.yes} @click=${() => { this.arrived = 'yes'; this.said = say.counted; this.tell('asf-left', null); }}></asf-button>
      <asf-button word=${say.no} @click=${() => { this.arrived = 'no'; this.said = say.notCounted; }}></asf-button></div></asf-message>`;
  }

  private saveLink(file: File, first: boolean): TemplateResult {
    const say = words().handOver;
    return first
      ? html`<a class="cut primary prepared-save" href=${this.address} download=${file.name} @click=${this.saved}><span class="primary-verb">${say.save}</span><asf-icon name="file" size="48"></asf-icon></a>`
      : html`<a class="second-button second-link prepared-save" href=${this.address} download=${file.name} @click=${this.saved}><asf-icon name="file"></asf-icon><span>${say.save}</span></a>`;
  }

  private readonly saved = (): void => {
    this.said = words().handOver.saved;
    // Nothing tells a page what became of a download: it was asked for, no more.
    if (!this.asks) this.tell('asf-left', null);
    else if (this.arrived !== 'yes') this.arrived = 'asked';
  };

  private readonly share = async (file: File | null): Promise<void> => {
    if (!file) return;
    const say = words().handOver;
    this.said = '';
    this.failed = '';
    // On one system this never settles after "Save Image": nothing is locked while it is open.
    const came = await share(file);
    if (came === 'shared') {
      this.said = say.shared;
      this.arrived = 'yes';
      this.tell('asf-left', null);
    } else if (came === 'cancelled') this.said = say.cancelled;
    else this.failed = came.failed;
  };

  private readonly copy = async (): Promise<void> => {
    const say = words().handOver;
    try {
      await navigator.clipboard.writeText(await this.file?.text() ?? '');
      this.said = say.copied;
    } catch (error) {
      this.failed = error instanceof Error ? error.message : String(error);
    }
  };

  private readonly look = async (): Promise<void> => {
    this.text = this.text ? '' : (await this.file?.text() ?? '');
  };

  private drop(): void {
    if (this.address) URL.revokeObjectURL(this.address);
    this.address = '';
    this.said = '';
    this.failed = '';
    this.text = '';
    this.arrived = 'open';
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-prepared': Prepared } }
