import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { PLACES, type Place } from '../words/places';
import './icon';
import type { IconName } from './icon-drawings';
import { LightElement } from './light-element';

/** The five places: a thumb index below on a phone, a rail at the left from 1000 px. */
@customElement('asf-index')
export class IndexBar extends LightElement {
  @property() current: Place | '' = '';
  @property({ attribute: false }) address: (place: Place) => string = (place) => `#/${place}`;
  @property() home = '#/';
  /** On the rail: the state of safe keeping in a word, and where it is told. */
  @property() keeping = '';
  /** A tick only while it is kept. */
  @property() keepingIcon: IconName = 'kept';
  @property() keepingAddress = '#/safe-keeping';

  override render(): TemplateResult {
    const say = words().places;
    return html`<nav class="index" aria-label=${say.nav}>
      <a class="index-name" href=${this.home}>${say.app}</a>
      ${PLACES.map((place) => html`<a class="index-cell" href=${this.address(place)} aria-current=${this.current === place ? 'page' : nothing}
        ><asf-icon name=${place}></asf-icon><span class="index-word">${say[place]}</span></a>`)}
      ${this.keeping ? html`<a class="index-keep index-cell" href=${this.keepingAddress}><asf-icon name=${this.keepingIcon}></asf-icon><span>${this.keeping}</span></a>` : nothing}
    </nav>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-index': IndexBar } }
