import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import '../styles/sheet.css';
import '../styles/stores.css';
import './find';
import './one';

/** Where is it: `#/where` finds a part, `#/where/ID` shows the way to it. */
@customElement('asf-place-where')
export class WherePlace extends LightElement {
  @property({ attribute: false }) address?: Address;

  override render(): TemplateResult {
    const id = this.address?.id;
    return id ? html`<asf-where-one .partId=${id} .address=${this.address}></asf-where-one>` : html`<asf-where-find></asf-where-find>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-where': WherePlace } }
