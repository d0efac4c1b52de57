import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import './icon';
import './tag';
import { LightElement } from './light-element';
import type { Standing, TagMarks } from './standing';

/** A part in a list: tag first, photo last. A link with `href`, a button that stays down with `selecting`. */
@customElement('asf-row')
export class Row extends LightElement {
  @property() number = '';
  @property() standing: Standing = 'off';
  /** Where another word than that of its standing is said under the tag. */
  @property() standingWord = '';
  @property({ attribute: false }) marks: TagMarks = {};
  /** Text, or a template with the letters found in <mark>. */
  @property({ attribute: false }) name: unknown = '';
  @property({ attribute: false }) second: unknown = '';
  /** A figure before the photo. */
  @property({ attribute: false }) end: unknown = '';
  /** Address of the small photo; empty leaves the ground, undefined no column. */
  @property({ attribute: false }) photo?: string | undefined;
  @property() href?: string;
  @property({ type: Boolean }) selecting = false;
  @property({ type: Boolean }) chosen = false;
  @property({ type: Boolean }) current = false;
  /** 44 px rows for a desk. */
  @property({ type: Boolean, reflect: true }) compact = false;

  override render(): TemplateResult {
    const inside = this.inside();
    if (this.selecting) return html`<button type="button" class="row ${this.chosen ? 'cut' : ''}" aria-pressed=${this.chosen ? 'true' : 'false'}>${inside}</button>`;
    if (this.href !== undefined) return html`<a class="row ${this.current ? 'cut' : ''}" href=${this.href} aria-current=${this.current ? 'true' : nothing}>${inside}</a>`;
    return html`<div class="row">${inside}</div>`;
  }

  private inside(): TemplateResult {
    const { inHand = false, irreplaceable = false, missing = false, foreign = false, struck = false } = this.marks;
    return html`<span class="row-tag"><asf-tag .number=${this.number} .standing=${this.standing} .standingWord=${this.standingWord} .size=${this.compact ? 32 : 40} .inHand=${inHand}
        .irreplaceable=${irreplaceable} .missing=${missing} .foreign=${foreign} .struck=${struck}></asf-tag>
        <span class="row-standing" aria-hidden="true">${missing ? words().marks.missing : this.standingWord || words().standings[this.standing]}</span></span>
      <span class="row-words"><span class="row-name">${this.name}</span><span class="row-second">${this.second}</span></span>
      ${this.end ? html`<span class="row-end">${this.end}</span>` : nothing}
      ${this.selecting && this.chosen ? html`<asf-icon class="row-tick" name="check"></asf-icon>` : this.picture()}`;
  }

  private picture(): TemplateResult | typeof nothing {
    if (this.photo === undefined) return nothing;
    return this.photo ? html`<img class="row-photo" src=${this.photo} alt="" loading="lazy" decoding="async">` : html`<span class="row-photo"></span>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-row': Row } }
