import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PartLine } from '../../bridge/protocol';
import { textOf } from '../field-text';
import '../kit/dialog';
import '../kit/field';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';
import { words } from '../words';

const SHOWN = 20;

/** Chooses the part that a tag goes on. Tells `asf-part`; `asf-close` without a choice. */
@customElement('asf-give-tag')
export class GiveTag extends LightElement {
  @property({ type: Boolean }) open = false;
  @property() code = '';
  @state() private sought = '';
  private readonly found = new Live(this, 'parts', () => (this.open ? { ask: 'parts', find: this.sought.trim(), group: 'none', count: SHOWN } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('open') || !this.open) return;
    this.sought = '';
    this.found.soon();
  }

  override render(): TemplateResult {
    return html`<asf-dialog .open=${this.open} .label=${words().scan.giveTitle(this.code)} .body=${this.open ? this.body() : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog>`;
  }

  private body(): TemplateResult {
    const say = words().scan;
    const rows = this.found.view?.rows ?? [];
    return html`<asf-field kind="find" icon="find" hide-label .label=${say.giveFind} .placeholder=${say.giveFind} .value=${this.sought} @input=${(event: Event) => { this.sought = textOf(event); this.found.soon(); }}></asf-field>
      ${rows.length === 0 && this.sought ? html`<p class="second">${words().where.none.first}</p>` : nothing}
      <ul class="place-choices">${rows.map((line) => html`<li><button type="button" class="place-choice" @click=${() => { this.choose(line); }}><span class="place-choice-name">${line.name || say.noName}</span><span class="second">${tagFigures(line.tag)}</span></button></li>`)}</ul>`;
  }

  private choose(line: PartLine): void {
    this.open = false;
    this.tell<PartLine>('asf-part', line);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-give-tag': GiveTag } }
