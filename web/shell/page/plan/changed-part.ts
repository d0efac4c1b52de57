import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';

/** A part whose decision another route has overtaken: the way to its routes. */
@customElement('asf-changed-part')
export class ChangedPart extends LightElement {
  @property() of = '';
  private readonly live = new Live(this, 'part', () => (this.of ? { ask: 'part', part: this.of } : null));

  override render(): TemplateResult | typeof nothing {
    const line = this.live.view?.line;
    return line ? html`<a class="plan-changed" href="#/routes/${line.id}">${[tagFigures(line.tag), line.name].filter(Boolean).join(' ')}</a>` : nothing;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-changed-part': ChangedPart } }
