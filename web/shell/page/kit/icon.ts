import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';
import { drawings, type IconName } from './icon-drawings';

/** A drawn icon. It never stands alone: its word is under it, beside it, or on the control that holds it. */
@customElement('asf-icon')
export class Icon extends LightElement {
  @property() name: IconName = 'parts';
  @property() word = '';
  /** The word under the drawing instead of beside it. */
  @property({ type: Boolean, reflect: true }) under = false;
  @property({ reflect: true }) size = '28';

  override render(): TemplateResult {
    return html`<svg viewBox="0 0 28 28" aria-hidden="true">${drawings[this.name]}</svg>${
      this.word ? html`<span class="icon-word">${this.word}</span>` : nothing}`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-icon': Icon } }
