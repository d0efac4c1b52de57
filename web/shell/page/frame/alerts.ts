import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { desk, type StoreTrouble } from '../../bridge/desk';
import type { Problem } from '../../bridge/protocol';
import '../kit/button';
import { sayInDialogs } from '../kit/dialog';
import '../kit/message';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import './unsaved';

/** What has gone wrong: trouble with storing, photos that are not saved, what was refused. */
@customElement('asf-alerts')
export class Alerts extends LightElement {
  @state() private trouble: StoreTrouble | null = desk.trouble();
  @state() private refused: readonly Problem[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('trouble', this.troubled);
    document.addEventListener('asf-done', this.isDone);
    document.addEventListener('asf-refused', this.isRefused);
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('trouble', this.troubled);
    document.removeEventListener('asf-done', this.isDone);
    document.removeEventListener('asf-refused', this.isRefused);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    return html`<div class="alerts">${this.troubleBar()}${this.refusedBar()}<asf-unsaved></asf-unsaved></div>`;
  }

  private troubleBar(): TemplateResult | typeof nothing {
    if (!this.trouble) return nothing;
    const { code, safe, waiting } = this.trouble;
    const { happened, safe: kept, todo } = words().frame.trouble(code, safe, waiting);
    return html`<asf-message kind="alert" class="notice" data-trouble=${code} .happened=${happened} .safe=${kept} .todo=${todo}>
      <div class="pair">${code === 'quota-exceeded' ? html`<asf-button word=${words().places.handOver} icon="share" href="#/hand-over"></asf-button>`
        : html`<asf-button word=${words().frame.reload} icon="rotate" @click=${() => { location.reload(); }}></asf-button>`}
      <asf-button word=${words().frame.rescue} icon="bring" href="./rescue.html"></asf-button></div></asf-message>`;
  }

  private refusedBar(): TemplateResult | typeof nothing {
    const [problem] = this.refused;
    if (!problem) return nothing;
    const text = words().problems;
    return html`<asf-message kind="alert" class="notice" data-problem=${problem.code} .happened=${text.happened(problem)} .safe=${text.safe(problem)} .todo=${text.todo(problem)}>
      <asf-button word=${words().frame.close} icon="close" @click=${() => { this.refused = []; }}></asf-button></asf-message>`;
  }

  private readonly troubled = (event: CustomEvent<StoreTrouble | null>): void => { this.trouble = event.detail; };
  private readonly isDone = (): void => { this.refused = []; };
  private readonly isRefused = (event: CustomEvent<{ problems: readonly Problem[] }>): void => { this.refused = event.detail.problems; };
}

sayInDialogs(() => html`<asf-alerts></asf-alerts>`);

declare global { interface HTMLElementTagNameMap { 'asf-alerts': Alerts } }
