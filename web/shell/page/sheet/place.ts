import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { backOf } from '../back-of';
import { LightElement } from '../kit/light-element';
import '../parts/panes';
import type { Address } from '../places';
import '../styles/parts.css';

/** The sheet of a part; on a desk with the list beside it. */
@customElement('asf-place-part')
export class PlacePart extends LightElement {
  @property({ attribute: false }) address?: Address;

  override render(): TemplateResult {
    return html`<asf-parts-panes first="sheet" .partId=${this.address?.id ?? ''} back=${backOf(this.address, '#/parts')}></asf-parts-panes>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-part': PlacePart } }
