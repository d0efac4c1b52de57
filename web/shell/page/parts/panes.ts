import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import * as journal from '../journal';
import '../kit/empty';
import { LightElement } from '../kit/light-element';
import '../sheet/sheet';
import { words } from '../words';
import './list';

const desk = matchMedia('(min-width: 62.5em)');

/** List and sheet: side by side on a desk, one of them on a phone. */
@customElement('asf-parts-panes')
export class PartsPanes extends LightElement {
  /** Which one a phone shows. */
  @property() first: 'list' | 'sheet' = 'list';
  @property() partId = '';
  /** Where the sheet leads back to; where that is not the list, beside the list, too. */
  @property() back = '#/parts';
  @state() private wide = desk.matches;
  private timer: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('change', this.resized);
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('change', this.resized);
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    if (!this.wide) return this.first === 'list' ? html`<asf-parts-list></asf-parts-list>` : html`<asf-part-sheet .partId=${this.partId} back=${this.back}></asf-part-sheet>`;
    const say = words().parts.choosePart;
    return html`<div class="parts-panes"><div class="parts-pane"><asf-parts-list panes .current=${this.partId} @asf-open=${this.opened}></asf-parts-list></div>
      <div class="parts-pane parts-pane-sheet">${this.partId ? html`<asf-part-sheet beside .partId=${this.partId} back=${this.back}></asf-part-sheet>` : html`<div class="body"><asf-empty .first=${say.first} .then=${say.then}></asf-empty></div>`}</div></div>${nothing}`;
  }

  private readonly resized = (): void => { this.wide = desk.matches; };

  // While an arrow key is held the list runs on; the sheet follows when it stands.
  private readonly opened = (event: CustomEvent<{ part: string }>): void => {
    clearTimeout(this.timer);
    const { part } = event.detail;
    this.timer = setTimeout(() => {
      // Chosen from the list: it was not opened from elsewhere.
      [this.partId, this.back] = [part, '#/parts'];
      // The address follows without a change of place: a reload shows the same two panes.
      history.replaceState(history.state, '', `#/part/${part}`);
      journal.at({ hash: `#/part/${part}` });
    }, 60);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-parts-panes': PartsPanes } }
