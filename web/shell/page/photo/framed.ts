import { html, svg, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { RecordView } from '../../bridge/protocol';
import { LightElement } from '../kit/light-element';
import '../styles/photo.css';
import { words } from '../words';
import { LargePicture } from './large-picture';
import { markOf } from './mark-shape';
import { contain, cover, losesHalf, marksLayer } from './marks-layer';

/** A photo that fills its box, with its marks over it. */
@customElement('asf-framed')
export class Framed extends LightElement {
  @property() hash = '';
  @property({ attribute: false }) marks: readonly RecordView[] = [];
  @property() label = '';
  /** Where covering the box would cut away more than half of it, it stands there whole. */
  @property({ type: Boolean }) whole = false;
  @state() private box: readonly [number, number] = [0, 0];
  @state() private natural: readonly [number, number] = [0, 0];
  private readonly picture = new LargePicture(this);
  private readonly sizes = new ResizeObserver(([entry]) => { if (entry) this.box = [entry.contentRect.width, entry.contentRect.height]; });

  override connectedCallback(): void {
    super.connectedCallback();
    this.sizes.observe(this);
  }

  override disconnectedCallback(): void {
    this.sizes.disconnect();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const address = this.picture.address(this.hash);
    return html`${address ? html`<img class="framed-picture ${this.isWhole ? 'framed-whole' : ''}" src=${address} alt=${this.label} decoding="async" @load=${this.loaded}>`
      : html`<span class="framed-empty second">${this.picture.missing ? words().photo.missing.happened : nothing}</span>`}${address ? this.layer() : nothing}`;
  }

  private get isWhole(): boolean {
    return this.whole && this.box[0] > 0 && this.natural[0] > 0 && losesHalf(this.box, this.natural);
  }

  private layer(): TemplateResult | typeof nothing {
    if (this.marks.length === 0 || this.natural[0] === 0 || this.box[0] === 0) return nothing;
    return html`<svg class="marks-layer" aria-hidden="true" width=${this.box[0]} height=${this.box[1]}>${svg`${marksLayer(this.marks.map(markOf), (this.isWhole ? contain : cover)(this.box, this.natural))}`}</svg>`;
  }

  private readonly loaded = ({ target }: Event): void => {
    if (target instanceof HTMLImageElement) this.natural = [target.naturalWidth, target.naturalHeight];
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-framed': Framed } }
