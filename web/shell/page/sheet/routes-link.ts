import { html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PartView } from '../../bridge/protocol';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { routeWord } from '../routes/route-word';
import { today } from '../today';
import { words } from '../words';

/** What becomes of the part, and the way to its quotes. */
@customElement('asf-sheet-routes')
export class SheetRoutes extends LightElement {
  @property({ attribute: false }) view?: PartView;
  private readonly cost = new Live(this, 'cost', () => (this.view ? { ask: 'cost', part: this.view.record.id, today: today() } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (changed.has('view') && this.hasUpdated && before?.record.id !== this.view?.record.id) this.cost.anew();
  }

  override render(): TemplateResult {
    const say = words().sheet.routes;
    return html`<a class="sheet-link" href=${`#/routes/${this.view?.record.id ?? ''}`}>
      <span class="section-label">${say.link}</span><span class="sheet-link-value">${this.state()}</span><asf-icon name="next" size="20"></asf-icon></a>`;
  }

  private state(): TemplateResult | string {
    const say = words().sheet.routes;
    const route = this.view?.line.route;
    if (route) return html`<b>${routeWord(route)}</b>`;
    const quotes = this.cost.view?.quotes.length ?? 0;
    return quotes > 0 ? say.open(quotes) : say.enter;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-routes': SheetRoutes } }
