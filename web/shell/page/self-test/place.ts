import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../kit/button';
import '../kit/head';
import '../kit/icon';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import '../styles/hand-over.css';
import { words } from '../words';
import { dayOfYear } from '../words/format';
import { cameraTest } from './camera-test';
import { shareTest, soundTest, wakeTest, windowTest } from './other-tests';
import type { Result } from './result';
import { roomTest, storageTest } from './storage-test';

/** What this device can do, with a report that can be copied. */
@customElement('asf-place-self-test')
export class PlaceSelfTest extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private results: readonly Result[] = [];
  @state() private running = false;
  @state() private copied = '';

  override render(): TemplateResult {
    const say = words().selfTest;
    const over = this.results.length > 0 && !this.running;
    return html`<asf-head .name=${say.title} back="#/settings"></asf-head>
      <div class="body keep-body"><p class="reckoned">${say.lead}</p>
        <ul aria-live="polite">${this.results.map((result) => html`<li class="test-line">${line(result)}</li>`)}</ul>
        ${over ? html`<asf-section .label=${say.report}><pre class="test-report" tabindex="0" aria-label=${say.report}>${this.report()}</pre></asf-section>
          <asf-button icon="rotate" word=${say.again} @click=${this.run}></asf-button><p role="status">${this.copied || nothing}</p>` : nothing}</div>
      <div class="foot">${over ? html`<asf-primary .verb=${say.copy} icon="list" @click=${this.copy}></asf-primary>` : html`<asf-primary .verb=${this.running ? say.running : say.run} icon="gauge" ?disabled=${this.running} @click=${this.run}></asf-primary>`}</div>`;
  }

  private readonly run = async (): Promise<void> => {
    this.running = true;
    this.results = [];
    this.copied = '';
    for (const test of [storageTest, roomTest, windowTest, cameraTest, wakeTest, shareTest, soundTest]) this.results = [...this.results, ...await test()];
    this.running = false;
  };

  private report(): string {
    const say = words().selfTest;
    const lines = this.results.map(({ name, works, said }) => `${say.names[name]}: ${outcome(works, said)}`);
    return [`asfound, ${dayOfYear(new Date())}`, `${say.device}: ${navigator.userAgent}`, `${screen.width} × ${screen.height} × ${devicePixelRatio}, ${navigator.language}`, ...lines].join('\n');
  }

  private readonly copy = async (): Promise<void> => {
    const say = words().selfTest;
    try {
      await navigator.clipboard.writeText(this.report());
      this.copied = say.copied;
    } catch {
      this.copied = say.copyBy;
    }
  };
}

/** Where it neither works nor fails, what was found speaks for itself. */
function outcome(works: boolean | null, said: string): string {
  const say = words().selfTest;
  if (works === null) return said || say.unknown;
  const verdict = works ? say.yes : say.no;
  return said ? `${verdict} (${said})` : verdict;
}

function line({ name, works, said }: Result): TemplateResult {
  const icon = works === null ? 'not-proved' : works ? 'proved' : 'proved-bad';
  return html`<asf-icon name=${icon}></asf-icon><div class="leader-row"><span>${words().selfTest.names[name]}</span><span class="leader-dots" aria-hidden="true"></span><span class="leader-value">${outcome(works, said)}</span></div>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-self-test': PlaceSelfTest } }
