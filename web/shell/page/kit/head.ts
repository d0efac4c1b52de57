import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import './icon';
import type { IconName } from './icon-drawings';
import { LightElement } from './light-element';

/** A cell at the right of a head: a link, or a button that tells `asf-cell` with its id. */
export interface HeadCell {
  id: string;
  word: string;
  icon?: IconName;
  href?: string;
  pressed?: boolean;
  label?: string;
}

/** The head of a screen. `sheet` is the taller one of a part; `ink` the plate above the viewfinder. */
@customElement('asf-head')
export class Head extends LightElement {
  @property({ attribute: false }) name: unknown = '';
  @property({ attribute: false }) second: unknown = '';
  /** Where back leads; without it there is no way back. `back-event` makes it a button that tells `asf-back`. */
  @property() back?: string;
  @property({ type: Boolean, attribute: 'back-event' }) backEvent = false;
  @property({ attribute: false }) cells: readonly HeadCell[] = [];
  /** A tag before the words, a side after them: templates. */
  @property({ attribute: false }) tag: unknown = nothing;
  @property({ attribute: false }) side: unknown = nothing;
  @property({ type: Boolean }) sheet = false;
  @property({ type: Boolean }) ink = false;

  override render(): TemplateResult {
    return html`<header class="head ${this.sheet ? 'head-sheet' : ''} ${this.ink ? 'head-ink' : ''}">
      ${this.wayBack()}
      ${this.tag === nothing ? nothing : html`<span class="head-tag">${this.tag}</span>`}
      <div class="head-words"><h1 class="head-title" tabindex="-1">${this.name}</h1><div class="head-second">${this.second}</div></div>
      ${this.side === nothing ? nothing : html`<span class="head-side">${this.side}</span>`}
      ${this.cells.map((cell) => this.cell(cell))}
    </header>`;
  }

  private wayBack(): TemplateResult | typeof nothing {
    const icon = html`<asf-icon name="back"></asf-icon>`;
    const label = words().kit.back;
    if (this.backEvent) return html`<button type="button" class="head-back" aria-label=${label} @click=${() => { this.tell('asf-back', null); }}>${icon}</button>`;
    return this.back === undefined ? nothing : html`<a class="head-back" href=${this.back} aria-label=${label}>${icon}</a>`;
  }

  private cell({ id, word, icon, href, pressed, label }: HeadCell): TemplateResult {
    const inside = html`${icon ? html`<asf-icon name=${icon}></asf-icon>` : nothing}<span>${word}</span>`;
    const look = `head-cell head-cell-${id} ${icon ? '' : 'head-cell-word'}`;
    if (href !== undefined) return html`<a class=${look} href=${href} aria-label=${label ?? nothing}>${inside}</a>`;
    return html`<button type="button" class=${look} aria-pressed=${pressed === undefined ? nothing : pressed ? 'true' : 'false'} aria-label=${label ?? nothing}
      @click=${() => { this.tell('asf-cell', { id }); }}>${inside}</button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-head': Head } }
