import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import './icon';
import { LightElement } from './light-element';

let dialogs = 0;
let saidOver: () => unknown = () => nothing;

/** What has to be said above all places stands in an open dialog, too: nothing else can be seen or reached then. */
export function sayInDialogs(what: () => unknown): void {
  saidOver = what;
}

/** A sheet laid over the page, square. Escape and Close tell `asf-close`; focus goes back to where it came from. `light`: a tap beside it closes it too. */
@customElement('asf-dialog')
export class Dialog extends LightElement {
  @property({ type: Boolean }) open = false;
  @property({ type: Boolean }) light = false;
  /** The focus stays on the heading: the first field is not what it is opened for. */
  @property({ type: Boolean }) still = false;
  @property({ attribute: false }) label: unknown = '';
  @property({ attribute: false }) body: unknown = nothing;
  /** Buttons at the foot; the one that does it last. */
  @property({ attribute: false }) actions: unknown = nothing;

  private readonly mark = `asf-dialog-${++dialogs}`;
  private cameFrom: HTMLElement | null = null;
  private pressedBeside = false;

  override render(): TemplateResult {
    return html`<dialog class="dialog" aria-labelledby=${this.mark} @close=${this.closed} @cancel=${(event: Event) => { event.stopPropagation(); }}
      @keydown=${this.key} @pointerdown=${(event: PointerEvent) => { this.pressedBeside = this.isBeside(event); }} @click=${this.clicked}>
      ${this.open ? html`<div class="dialog-top"><div class="dialog-head"><h2 class="dialog-label" id=${this.mark} tabindex="-1" autofocus>${this.label}</h2>
        <button type="button" class="dialog-close" @click=${() => { this.dialog?.close(); }}><asf-icon name="close"></asf-icon><span class="unseen">${words().kit.close}</span></button></div>${saidOver()}</div>
      <div class="dialog-body">${this.body}</div>
      ${this.actions === nothing ? nothing : html`<div class="dialog-actions">${this.actions}</div>`}` : nothing}
    </dialog>`;
  }

  override updated(changed: PropertyValues<this>): void {
    if (!changed.has('open') || !this.dialog) return;
    if (this.open && !this.dialog.open) {
      this.cameFrom = document.activeElement instanceof HTMLElement ? document.activeElement : null;
      this.dialog.showModal();
      void this.enter();
    } else if (!this.open && this.dialog.open) this.dialog.close();
  }

  override disconnectedCallback(): void {
    if (this.dialog?.open) this.dialog.close();
    super.disconnectedCallback();
  }

  /** The heading is read out; then the first field, unless the sheet has gone to one of its own. */
  private async enter(): Promise<void> {
    const heading = this.querySelector<HTMLElement>('.dialog-label');
    heading?.focus({ preventScroll: true });
    await new Promise((soon) => { requestAnimationFrame(soon); });
    if (!this.open || this.still || document.activeElement !== heading) return;
    const field = [...this.querySelectorAll<HTMLInputElement>('.dialog-body :is(input, textarea, select):not(:disabled)')].find((one) => one.type !== 'radio' || one.checked);
    // With a finger one chooses from the list; the keys of the screen would lie over it.
    if (field && !(field.type === 'search' && matchMedia('(pointer: coarse)').matches)) field.focus();
  }

  private get dialog(): HTMLDialogElement | null {
    return this.querySelector(':scope > dialog');
  }

  // The engines close it by themselves, but not while a list of suggestions hangs open in it, nor each of them twice in a row.
  private readonly key = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.isComposing || event.defaultPrevented) return;
    event.preventDefault();
    this.dialog?.close();
  };

  // What began inside, as marking a word does, closes nothing where it ends beside.
  private readonly clicked = (event: MouseEvent): void => {
    if (this.light && this.pressedBeside && this.isBeside(event)) this.dialog?.close();
    this.pressedBeside = false;
  };

  private isBeside(event: MouseEvent): boolean {
    const { dialog } = this;
    if (!dialog || event.target !== dialog) return false;
    const { left, right, top, bottom } = dialog.getBoundingClientRect();
    return event.clientX < left || event.clientX > right || event.clientY < top || event.clientY > bottom;
  }

  private readonly closed = (event: Event): void => {
    event.stopPropagation();
    this.open = false;
    if (this.cameFrom?.isConnected) this.cameFrom.focus();
    this.tell('asf-close', null);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-dialog': Dialog } }
