import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import * as journal from '../journal';
import '../kit/button';
import '../kit/dialog';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import '../styles/routes.css';
import { words } from '../words';

const NAME = 'who';

/** Who decides on this device; nothing when it was not asked yet, empty for "no name". */
export function whoDecides(): string | null {
  return journal.preference(NAME);
}

/** Asks for the name that a decision, or having read a caution, is kept with: once on a device. Tells `asf-who`. */
@customElement('asf-who-dialog')
export class WhoDialog extends LightElement {
  @property({ type: Boolean }) open = false;
  /** What is asked for, where it is not a choice. */
  @property({ attribute: false }) asked?: { title: string; lead: string; go: string; without: string };
  @state() private name = '';

  override render(): TemplateResult {
    const { label } = words().costing.who;
    const say = this.asked ?? words().costing.who;
    const body = html`<p class="reckoned">${say.lead}</p><form class="quote-form" @submit=${(event: Event) => { event.preventDefault(); this.answer(this.name.trim()); }}>
      <asf-field .label=${label} .value=${this.name} max="100" @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) this.name = event.target.value; }}></asf-field>
      <asf-primary small kind="submit" verb=${say.go} icon="check" ?disabled=${!this.name.trim()}></asf-primary>
      <asf-button word=${say.without} @click=${() => { this.answer(''); }}></asf-button></form>`;
    return html`<asf-dialog .open=${this.open} .label=${say.title} .body=${this.open ? body : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    // The name is all that is asked for: it can be typed at once.
    if (changed.has('open') && this.open) void this.focusName();
  }

  private async focusName(): Promise<void> {
    await this.querySelector('asf-dialog')?.updateComplete;
    await this.querySelector('asf-field')?.updateComplete;
    this.querySelector<HTMLInputElement>('input')?.focus();
  }

  private answer(who: string): void {
    journal.prefer(NAME, who);
    this.open = false;
    this.tell('asf-who', { who });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-who-dialog': WhoDialog } }
