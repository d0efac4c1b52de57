import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Bearing, Seal } from '../../bridge/protocol';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { figures } from '../measures/amount';
import { words } from '../words';

/** What the number stamped on a part says of it: the size of a bearing or a shaft seal, as tables have it. */
@customElement('asf-stamped')
export class Stamped extends LightElement {
  @property() text = '';
  private readonly found = new Live(this, 'identify', () => (this.text.trim() ? { ask: 'identify', text: this.text } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('text') && this.hasUpdated) this.found.anew();
  }

  override render(): TemplateResult | typeof nothing {
    const { bearing, seal } = this.found.view ?? {};
    return bearing ? html`<p class="reckoned">${ofBearing(bearing)}</p>` : seal ? html`<p class="reckoned">${ofSeal(seal)}</p>` : nothing;
  }
}

/** Sizes of bearings and seals are called in millimetres, whatever the job measures in. */
const millimetres = (length: number): string => figures(length, 'length', 'metric');

function ofBearing({ designation, bore, outside, width, or_width, suffixes, source }: Bearing): string {
  const say = words().sheet.stamped;
  const size = say.size(millimetres(bore), millimetres(outside), millimetres(width));
  const more = [...suffixes.map((suffix) => say.suffixes[suffix]), ...(or_width === undefined ? [] : [say.orWidth(millimetres(or_width))]), ...(source === 'iso-15-from-memory' ? [say.unsourced] : [])];
  return [say.bearing(designation, size), ...more].join(' ');
}

function ofSeal({ shaft, bore, width }: Seal): string {
  const say = words().sheet.stamped;
  return say.seal(say.size(millimetres(shaft), millimetres(bore), millimetres(width)));
}

declare global { interface HTMLElementTagNameMap { 'asf-stamped': Stamped } }
