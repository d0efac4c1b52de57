import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { RecordView } from '../../bridge/protocol';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import type { FieldKind } from '../kit/field';
import '../kit/leader';
import { LightElement } from '../kit/light-element';
import { words } from '../words';

/**
 * Puts a text down over the record as it stood when the line was opened; answers with what is wrong with the text, '' once it
 * is stored, null when it was not stored.
 */
export type Save = (text: string, record?: RecordView) => Promise<string | null>;

/**
 * A value that opens to be changed. Every stroke goes to the journal; Enter and leaving the field put it down, Escape leaves
 * it as it was. What was typed and not put down opens again by itself.
 */
@customElement('asf-edit-line')
export class EditLine extends LightElement {
  @property() label = '';
  /** As it stands now. */
  @property() value = '';
  /** What is shown closed, when it differs. */
  @property({ attribute: false }) shown: unknown = '';
  @property() kind: FieldKind = 'text';
  @property() unit = '';
  @property() hint = '';
  @property() currency = 'GBP';
  /** Name in the journal. */
  @property() key = '';
  @property({ attribute: false }) suggestions: readonly string[] = [];
  /** The record that the value is of, as it stands now. */
  @property({ attribute: false }) record: RecordView | undefined;
  @property({ attribute: false }) save: Save = () => Promise.resolve('');
  @state() private open = false;
  @state() private text = '';
  @state() private wrong = '';
  private busy = false;
  /** Half a day reads as none: it must not empty what stands there. */
  private isHalf = false;
  /** What was on the screen when the line was opened: a value that comes in meanwhile was not seen, and is not overwritten. */
  private seen: RecordView | undefined;

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('key') || !this.key) return;
    const kept = journal.typedBefore(this.key);
    this.open = kept !== null && kept !== this.value;
    this.text = kept ?? '';
    this.seen = this.record;
    this.wrong = '';
  }

  override render(): TemplateResult {
    const shown = this.shown || this.value || html`<span class="second">${words().sheet.named.empty}</span>`;
    if (!this.open) return html`<asf-leader opens .label=${this.label} .value=${shown} @click=${this.start}></asf-leader>`;
    return html`<form class="edit-line" @submit=${this.submitted} @focusout=${this.left} @keydown=${this.pressed}>
      <asf-field .label=${this.label} .kind=${this.kind} .unit=${this.unit} .hint=${this.hint} .currency=${this.currency} .error=${this.wrong} .value=${this.text} .suggestions=${this.suggestions}
        max=${this.kind === 'area' ? 5000 : 300} @input=${this.typed}></asf-field>
      <asf-button compact kind="submit" icon="check" word=${words().sheet.named.put}></asf-button></form>${nothing}`;
  }

  private readonly start = (): void => {
    this.text = this.value;
    this.seen = this.record;
    this.open = true;
    void this.updateComplete.then(() => { this.enter(); });
  };

  // A figure is typed anew rather than mended: 20 over a 0 must not become 020.
  private enter(): void {
    const field = this.querySelector<HTMLInputElement | HTMLTextAreaElement>('input, textarea');
    field?.focus();
    if (this.kind !== 'text' && this.kind !== 'area') field?.select();
  }

  private readonly typed = (event: Event): void => {
    if (!(event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement)) return;
    this.text = event.target.value;
    this.isHalf = event.target.validity.badInput;
    journal.typing(this.key, this.text);
    this.wrong = '';
  };

  private readonly submitted = (event: Event): void => {
    event.preventDefault();
    void this.put(true);
  };

  private readonly left = (event: FocusEvent): void => {
    if (event.relatedTarget instanceof Node && this.contains(event.relatedTarget)) return;
    // Leaving means done: nothing typed is dropped.
    void this.put(false);
  };

  private readonly pressed = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    this.close(true);
  };

  private async put(withFocus: boolean): Promise<void> {
    if (this.busy || !this.open) return;
    if (this.isHalf) {
      this.wrong = words().sheet.named.notADay;
      return;
    }
    if (this.text === this.value) {
      this.close(withFocus);
      return;
    }
    const { text } = this;
    let wrong: string | null = null;
    this.busy = true;
    try {
      wrong = await this.save(text, this.seen);
    } finally {
      this.busy = false;
    }
    this.wrong = wrong ?? '';
    // What was not stored, or was typed in the meantime, stays in the field and in the journal.
    if (wrong === '' && this.text === text) this.close(withFocus);
    else if (wrong && withFocus) this.querySelector<HTMLElement>('input, textarea')?.focus();
  }

  private close(withFocus: boolean): void {
    journal.typed(this.key);
    this.open = false;
    this.isHalf = false;
    if (withFocus) void this.updateComplete.then(() => { this.focus(); });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-edit-line': EditLine } }
