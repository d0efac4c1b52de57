import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import './button';
import { LightElement } from './light-element';

const STAYS = 12_000;

/** What was just done, with Undo beside it for twelve seconds; the time stands still while a pointer or the focus is on it. */
@customElement('asf-undo')
export class UndoMessage extends LightElement {
  @property() message = '';
  @property({ type: Boolean, reflect: true }) open = false;

  private timer: ReturnType<typeof setTimeout> | undefined;

  // The live region is always there: one that appears with its words is not read out everywhere.
  override render(): TemplateResult {
    return html`<div class="undo" @pointerenter=${this.hold} @pointerleave=${this.start} @focusin=${this.hold} @focusout=${this.start}>
      <p role="status" class="undo-words">${this.open ? this.message : nothing}</p>
      ${this.open ? html`<asf-button icon="undo" word=${words().kit.undo} key="Z" @click=${this.undo}></asf-button>` : nothing}</div>`;
  }

  override updated(changed: PropertyValues<this>): void {
    if (changed.has('open') || changed.has('message')) this.start();
  }

  override disconnectedCallback(): void {
    this.hold();
    super.disconnectedCallback();
  }

  private readonly hold = (): void => { clearTimeout(this.timer); };

  private readonly start = (): void => {
    this.hold();
    if (this.open) this.timer = setTimeout(() => { this.open = false; this.tell('asf-gone', null); }, STAYS);
  };

  private readonly undo = (): void => {
    this.hold();
    this.open = false;
    this.tell('asf-undo', null);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-undo': UndoMessage } }
