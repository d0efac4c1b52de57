import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../styles/parts.css';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import { listState } from './list-state';
import './panes';

/** The place Parts: the list, on a desk with the sheet looked at last beside it. */
@customElement('asf-place-parts')
export class PlaceParts extends LightElement {
  @property({ attribute: false }) address?: Address;

  override render(): TemplateResult {
    return html`<asf-parts-panes first="list" .partId=${listState().part ?? ''}></asf-parts-panes>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-parts': PlaceParts } }
