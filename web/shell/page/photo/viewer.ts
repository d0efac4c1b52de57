import { html, svg, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Shape } from '../../bridge/protocol';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { LargePicture } from './large-picture';
import { WHOLE, markAt, markDrawn, type MarkShape } from './mark-shape';
import { marksLayer } from './marks-layer';

const MOST = 6;

/**
 * A photo that can be made larger and moved, by two fingers, buttons and keys, and drawn on while `drawing` says what.
 * Tells `asf-drawn` with the mark as it is drawn.
 */
@customElement('asf-viewer')
export class Viewer extends LightElement {
  @property() hash = '';
  @property() label = '';
  @property({ attribute: false }) marks: readonly MarkShape[] = [];
  /** The one that is being placed. */
  @property({ type: Number }) live = -1;
  @property() drawing: Shape | '' = '';
  @state() private zoom = 1;
  @state() private box: readonly [number, number] = [0, 0];
  @state() private natural: readonly [number, number] = [4, 3];
  private pinch: { apart: number; zoom: number } | null = null;
  private from: readonly [number, number] | null = null;
  readonly picture = new LargePicture(this);
  private readonly sizes = new ResizeObserver(([entry]) => { if (entry) this.box = [entry.contentRect.width, entry.contentRect.height]; });

  /** Breadth to height of the picture. */
  get aspect(): number {
    return this.natural[0] / this.natural[1];
  }

  override firstUpdated(): void {
    const frame = this.querySelector('.viewer-frame');
    if (!frame) return;
    this.sizes.observe(frame);
    // Not passive: two fingers must make the photo larger, not the page.
    frame.addEventListener('touchmove', this.pinched, { passive: false });
  }

  override disconnectedCallback(): void {
    this.sizes.disconnect();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().photo;
    const address = this.picture.address(this.hash);
    const [width, height] = this.size();
    return html`<div class="viewer-frame ${this.drawing ? 'viewer-drawing' : ''}" .style=${`aspect-ratio:${this.natural[0]}/${this.natural[1]}`} tabindex="0" role="group" aria-label=${say.view} @keydown=${this.pressed} @wheel=${this.wheeled}
        @touchstart=${this.touched} @touchend=${() => { this.pinch = null; }}>
      <div class="viewer-sheet" .style=${`width:${width}px;height:${height}px`} @pointerdown=${this.down} @pointermove=${this.move} @pointerup=${this.up} @pointercancel=${() => { this.from = null; }}>
        ${address ? html`<img class="viewer-picture" src=${address} alt=${this.label} draggable="false" @load=${this.loaded}>` : html`<p class="second viewer-wait">${this.picture.missing ? nothing : say.waiting}</p>`}
        <svg class="marks-layer" aria-hidden="true" width=${width} height=${height}>${svg`${marksLayer(this.marks, { left: 0, top: 0, width, height }, this.live)}`}</svg>
      </div></div>
      <div class="viewer-zoom">
        <asf-button compact icon="close" class="viewer-fit" word=${say.fit} ?disabled=${this.zoom === 1} @click=${() => { this.zoomTo(1); }}></asf-button>
        <asf-button compact word="−" label="− ${say.zoomOut}" ?disabled=${this.zoom <= 1} @click=${() => { this.zoomTo(this.zoom / 1.5); }}></asf-button>
        <asf-button compact word="+" label="+ ${say.zoomIn}" ?disabled=${this.zoom >= MOST} @click=${() => { this.zoomTo(this.zoom * 1.5); }}></asf-button>
        <span class="unseen" role="status">${this.zoom === 1 ? nothing : say.zoomed(Math.round(this.zoom * 100))}</span></div>`;
  }

  /** Of the picture on the screen: whole at zoom 1. */
  private size(): readonly [number, number] {
    const [bw, bh] = this.box;
    const scale = Math.min(bw / this.natural[0], bh / this.natural[1]) * this.zoom;
    return [Math.max(1, this.natural[0] * scale), Math.max(1, this.natural[1] * scale)];
  }

  private zoomTo(zoom: number, around?: readonly [number, number]): void {
    const frame = this.querySelector<HTMLElement>('.viewer-frame');
    if (!frame) return;
    const next = Math.min(MOST, Math.max(1, zoom));
    const [x, y] = around ?? [frame.clientWidth / 2, frame.clientHeight / 2];
    const factor = next / this.zoom;
    const to = [(frame.scrollLeft + x) * factor - x, (frame.scrollTop + y) * factor - y] as const;
    this.zoom = next;
    void this.updateComplete.then(() => { frame.scrollTo(to[0], to[1]); });
  }

  private readonly loaded = ({ target }: Event): void => {
    if (target instanceof HTMLImageElement && target.naturalWidth > 0) this.natural = [target.naturalWidth, target.naturalHeight];
  };

  // ---- larger and smaller ----

  private readonly touched = (event: TouchEvent): void => {
    if (event.touches.length === 2) {
      this.pinch = { apart: apart(event.touches), zoom: this.zoom };
      this.from = null;
    }
  };

  private readonly pinched = (event: Event): void => {
    if (!(event instanceof TouchEvent) || !this.pinch || event.touches.length !== 2) return;
    event.preventDefault();
    const frame = this.querySelector('.viewer-frame')?.getBoundingClientRect();
    const [a, b] = event.touches;
    if (frame && a && b) this.zoomTo((this.pinch.zoom * apart(event.touches)) / this.pinch.apart, [(a.clientX + b.clientX) / 2 - frame.left, (a.clientY + b.clientY) / 2 - frame.top]);
  };

  private readonly wheeled = (event: WheelEvent): void => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    const frame = this.querySelector('.viewer-frame')?.getBoundingClientRect();
    if (frame) this.zoomTo(this.zoom * Math.exp(-event.deltaY / 200), [event.clientX - frame.left, event.clientY - frame.top]);
  };

  private readonly pressed = (event: KeyboardEvent): void => {
    if (this.live >= 0 || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === '+' || event.key === '=') this.zoomTo(this.zoom * 1.5);
    else if (event.key === '-') this.zoomTo(this.zoom / 1.5);
    else if (event.key === '0') this.zoomTo(1);
    else return;
    event.preventDefault();
  };

  // ---- drawing ----

  private share(event: PointerEvent): readonly [number, number] {
    const sheet = this.querySelector('.viewer-sheet')?.getBoundingClientRect();
    if (!sheet) return [WHOLE / 2, WHOLE / 2];
    return [Math.round(((event.clientX - sheet.left) / sheet.width) * WHOLE), Math.round(((event.clientY - sheet.top) / sheet.height) * WHOLE)];
  }

  private readonly down = (event: PointerEvent): void => {
    if (!this.drawing || !event.isPrimary) return;
    event.preventDefault();
    this.from = this.share(event);
    if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
  };

  private readonly move = (event: PointerEvent): void => {
    const mark = this.drawn(event);
    if (mark && this.isFar(event)) this.tell('asf-drawn', mark);
  };

  private readonly up = (event: PointerEvent): void => {
    const mark = this.drawn(event);
    if (mark && this.from && this.drawing) this.tell('asf-drawn', this.isFar(event) ? mark : markAt(this.drawing, this.from[0], this.from[1], this.aspect));
    this.from = null;
  };

  private drawn(event: PointerEvent): MarkShape | null {
    return this.from && this.drawing && event.isPrimary ? markDrawn(this.drawing, this.from, this.share(event)) : null;
  }

  private isFar(event: PointerEvent): boolean {
    const to = this.share(event);
    return this.from !== null && Math.hypot(to[0] - this.from[0], to[1] - this.from[1]) > 200;
  }
}

function apart({ 0: a, 1: b }: TouchList): number {
  return a && b ? Math.max(1, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)) : 1;
}

declare global { interface HTMLElementTagNameMap { 'asf-viewer': Viewer } }
