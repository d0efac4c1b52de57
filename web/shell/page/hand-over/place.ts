import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/head';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import '../styles/hand-over.css';
import '../styles/parts.css';
import { words } from '../words';
import './job-file-in';
import './job-file-out';
import './list-out';

/** Lists and job files out, job files in. Without an open job only in. */
@customElement('asf-place-hand-over')
export class PlaceHandOver extends LightElement {
  @property({ attribute: false }) address?: Address;
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const open = desk.current() !== null;
    return html`<asf-head .name=${words().handOver.title} back=${open ? '#/job' : '#/first'} .cells=${open ? [this.keeping.cell] : []}></asf-head>
      <div class="body hand-over-body">${open ? html`<asf-list-out></asf-list-out><asf-job-file-out></asf-job-file-out>` : nothing}<asf-job-file-in></asf-job-file-in></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-hand-over': PlaceHandOver } }
