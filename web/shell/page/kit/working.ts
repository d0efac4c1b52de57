import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';

/** An opened figure: how it came about. The lines (asf-leader, the last one a result) are written between its tags. */
@customElement('asf-working')
export class Working extends LightElement {
  @property() label: unknown = '';
  @property() source = '';

  override render(): TemplateResult {
    return html`<div class="working-head"><h3 class="working-label">${this.label}</h3><span class="working-source">${this.source || words().kit.workingSource}</span></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-working': Working } }
