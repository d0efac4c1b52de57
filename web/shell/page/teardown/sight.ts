import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Series } from '../camera/series';
import type { Viewfinder } from '../camera/viewfinder';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import '../styles/sight.css';
import { words } from '../words';

/** The viewfinder, all of it a shutter; what is laid on it comes as `over`. Tells `asf-shoot`. */
@customElement('asf-sight')
export class Sight extends LightElement {
  @property({ attribute: false }) finder!: Viewfinder;
  @property({ attribute: false }) series: Series | null = null;
  @property({ attribute: false }) over: unknown = nothing;
  /** What to do without a camera, where it is not the shutter that takes files. */
  @property() todo = '';
  /** The sight darkens for a moment when a picture was taken. */
  @state() private flash = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.finder.addEventListener('sight', this.seen);
    this.series?.addEventListener('tick', this.seen);
  }

  override disconnectedCallback(): void {
    this.finder.removeEventListener('sight', this.seen);
    this.series?.removeEventListener('tick', this.seen);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const { sight } = this.finder;
    return html`<div class="sight sight-${sight} ${this.flash ? 'sight-flash' : ''}">
      <div class="sight-picture" aria-hidden="true" @click=${this.shoot}>${this.finder.video}</div>
      ${sight === 'live' ? nothing : this.blind()}
      ${this.series?.left == null ? nothing : this.countdown(this.series)}
      ${this.over}
    </div>`;
  }

  /** Shows that a picture was taken. */
  blink(): void {
    this.flash = true;
    setTimeout(() => { this.flash = false; }, 90);
  }

  private blind(): TemplateResult {
    const { sight } = this.finder;
    const text = words().teardown;
    const way = { refused: text.refusedTodo, none: text.noneTodo } as const;
    const todo = sight === 'refused' || sight === 'none' ? this.todo || way[sight] : '';
    if (sight === 'asleep') return html`<p class="sight-words" role="status"><button type="button" class="sight-wake" @click=${this.shoot}><b>${text.sight[sight]}</b></button></p>`;
    return html`<p class="sight-words" role="status"><b>${sight === 'live' ? '' : text.sight[sight]}</b>${todo ? html`<span>${todo}</span>` : nothing}</p>`;
  }

  private countdown(series: Series): TemplateResult {
    const text = words().teardown;
    return html`<div class="sight-count"><span class="sight-left" role="timer" aria-label=${text.countdown(series.left ?? 0)}>${series.left}</span>
      <button type="button" class="sight-stop" @click=${() => { series.stop(); }}><asf-icon name="stop"></asf-icon><span>${text.stopSeries}</span></button></div>`;
  }

  private readonly seen = (): void => { this.requestUpdate(); };

  private readonly shoot = (): void => { this.tell('asf-shoot', null); };
}

declare global { interface HTMLElementTagNameMap { 'asf-sight': Sight } }
