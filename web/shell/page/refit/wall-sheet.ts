import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { Id } from '../../bridge/protocol';
import { failure } from '../hand-over/list-out';
import { paperWords } from '../hand-over/paper-words';
import '../hand-over/prepared';
import '../hand-over/preparing';
import '../kit/button';
import '../kit/dialog';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../styles/hand-over.css';
import { today } from '../today';
import { words } from '../words';

/** The steps of one assembly as a page for the wall: prepared, then shared or saved, and printed from there. */
@customElement('asf-wall-sheet')
export class WallSheet extends LightElement {
  @property() assembly: Id = '';
  @property() name = '';
  @state() private open = false;
  @state() private busy = false;
  @state() private file: File | undefined;
  @state() private failed = '';

  override render(): TemplateResult {
    const say = words().refit.assembly;
    const { open } = this;
    return html`<asf-section .label=${say.sheet}><p class="second">${say.sheetLead} ${say.photos}</p>
      <asf-button icon="printer" word=${say.print} @click=${this.prepare}></asf-button></asf-section>
      <asf-dialog .open=${open} .label=${say.sheet} .body=${open ? this.body() : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog>`;
  }

  private body(): TemplateResult {
    const say = words().refit.assembly;
    return html`${this.busy ? html`<asf-preparing .what=${words().handOver.preparing(say.sheet)}></asf-preparing>` : nothing}
      ${this.file ? html`<asf-prepared .file=${this.file} @asf-again=${this.prepare}></asf-prepared>` : nothing}
      ${this.failed ? failure(this.failed) : nothing}`;
  }

  private readonly prepare = async (): Promise<void> => {
    this.open = true;
    // Closed while it was being made, it is waited for, not made twice.
    if (this.busy) return;
    [this.busy, this.file, this.failed] = [true, undefined, ''];
    try {
      this.file = await desk.prepareWallSheet(this.assembly, this.name, today(), paperWords());
    } catch (error) {
      this.failed = error instanceof Error ? error.message : String(error);
    } finally {
      this.busy = false;
    }
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-wall-sheet': WallSheet } }
