import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AssemblyLine } from '../../bridge/protocol';
import '../kit/button';
import '../kit/dialog';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/** Whether stripping an assembly now would take the reference away too early. What is begun is not asked about again. */
export function early({ reference, parts }: AssemblyLine): boolean {
  return reference?.is_kept === true && reference.early && parts === 0;
}

/** Asks before the reference is stripped. Tells `asf-strip`, or `asf-leave`. */
@customElement('asf-early')
export class Early extends LightElement {
  /** The assembly; nothing: not asked. */
  @property({ attribute: false }) line: AssemblyLine | null = null;

  override render(): TemplateResult {
    const say = words().assemblies.early;
    const name = this.called(this.line);
    const mirror = this.line?.reference?.mirror_name ?? '';
    return html`<asf-dialog .open=${this.line !== null} .label=${say.title(name)} .body=${this.line ? html`<p class="reckoned">${say.lead(name, mirror && mirror !== this.line.record.values.name ? mirror : '')}</p>` : nothing}
      .actions=${html`<asf-button word=${say.strip} @click=${() => { this.tell('asf-strip', null); }}></asf-button><asf-primary small verb=${say.leave} @click=${() => { this.tell('asf-leave', null); }}></asf-primary>`} @asf-close=${() => { this.tell('asf-leave', null); }}></asf-dialog>`;
  }

  private called(line: AssemblyLine | null): string {
    return [line?.record.values.name ?? words().assemblies.unnamed, line?.side ? words().sides[line.side] : ''].filter(Boolean).join(' ');
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-early': Early } }
