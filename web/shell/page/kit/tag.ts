import { html, svg, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import { LightElement } from './light-element';
import type { Standing, TagMarks } from './standing';
import { CUT, FIGURES_AT, HOLE, HOLE_IN, RING, figuresLength, hatch, inset, mirrored, path, tagOutline, tagWidth } from './tag-shape';

const U = 100;

/** The tie-on tag: a part is always shown by it. */
@customElement('asf-tag')
export class Tag extends LightElement {
  @property() number = '';
  @property() standing: Standing = 'off';
  /** Where another word than that of its standing is said. */
  @property() standingWord = '';
  /** 32 desk list, 36–40 list, 52 sheet head, 56–64 on a photo, 88 Teardown. */
  @property({ type: Number }) size = 40;
  @property({ type: Boolean, attribute: 'in-hand' }) inHand = false;
  /** What the page is about: it looks as if in hand, but only what is in hand is said to be. */
  @property({ type: Boolean }) about = false;
  @property({ type: Boolean }) irreplaceable = false;
  @property({ type: Boolean }) missing = false;
  @property({ type: Boolean }) foreign = false;
  @property({ type: Boolean }) struck = false;
  @property({ type: Boolean }) string = false;
  /** Where the words beside it already say number and standing. */
  @property({ type: Boolean }) quiet = false;

  get marks(): TagMarks {
    const { inHand, irreplaceable, missing, foreign, struck } = this;
    return { inHand, irreplaceable, missing, foreign, struck };
  }

  override render(): TemplateResult {
    const width = tagWidth(this.number.length);
    const label = words().kit.tagName(this.number, this.standing, this.marks, this.standingWord);
    return html`<svg class=${this.classes()} viewBox="0 0 ${width * U} ${U}" role="img"
      aria-label=${this.quiet ? nothing : label} aria-hidden=${this.quiet ? 'true' : nothing}
      height="${this.size / 16}rem" width="${(this.size * width) / 16}rem" stroke-width=${this.stroke()}>${this.drawing(width)}</svg>`;
  }

  private classes(): string {
    const over = { hand: this.inHand || this.about, missing: this.missing };
    return ['tag', `tag-${this.standing}`, ...Object.entries(over).filter(([, on]) => on).map(([name]) => `tag-${name}`)].join(' ');
  }

  private stroke(): number {
    if (this.size >= 80) return 3;
    if (this.size >= 52) return 2.4;
    return this.size <= 32 ? 1.8 : 2.2;
  }

  private drawing(width: number): TemplateResult {
    const plain = tagOutline(this.standing, width);
    const outline = this.foreign ? mirrored(plain, width) : plain;
    return svg`
      ${this.string ? svg`<path class="tag-string" vector-effect="non-scaling-stroke" d="M-24 -10L32 44M-24 4L28 52" />` : nothing}
      <path class="tag-face" vector-effect="non-scaling-stroke" d=${path(outline)} />
      ${this.standing === 'tried' ? hatch(outline, 0.19).map(([a, b]) =>
        svg`<path class="tag-line" vector-effect="non-scaling-stroke" stroke-width="1.2" d="M${a[0] * U} ${a[1] * U}L${b[0] * U} ${b[1] * U}" />`) : nothing}
      ${this.irreplaceable ? svg`<path class="tag-inner" vector-effect="non-scaling-stroke" stroke-width="1.2" d=${path(this.innerRule(width))} />` : nothing}
      ${this.hole(width)}${this.figures(width)}
      ${this.struck ? svg`<path class="tag-line" vector-effect="non-scaling-stroke" stroke-width="3" d="M${this.foreign ? 8 : 48} 50H${this.foreign ? width * U - 48 : width * U - 8}" />` : nothing}`;
  }

  // The second rule follows the plain card: it would not stay clear of clips and torn ends.
  private innerRule(width: number): ReturnType<typeof inset> {
    const clear = this.standing === 'off' || this.standing === 'judged' || this.standing === 'decided' ? 0 : 0.16;
    const card = inset(tagOutline('off', width - clear), 0.1);
    return this.foreign ? mirrored(card, width) : card;
  }

  private hole(width: number): TemplateResult {
    const x = (this.foreign ? width - HOLE_IN : HOLE_IN) * U;
    if (this.missing) {
      return svg`<path class="tag-line" vector-effect="non-scaling-stroke" d="M${x - 11} 39L${x + 11} 61M${x - 11} 61L${x + 11} 39" />`;
    }
    const ring = svg`<circle class="tag-ring" vector-effect="non-scaling-stroke" cx=${x} cy="50" r=${RING * U} />`;
    return this.standing === 'on' ? ring : svg`${ring}<circle class="tag-hole" cx=${x} cy="50" r=${HOLE * U} />`;
  }

  private figures(width: number): TemplateResult {
    const full = figuresLength(this.number.length);
    // Inside the double rule the figures are a little smaller.
    const scale = this.irreplaceable ? 0.9 : 1;
    const start = this.foreign ? width - FIGURES_AT - full * scale + CUT / 8 : FIGURES_AT;
    return svg`<text class="tag-figures" x=${start * U} y=${50 + 22.4 * scale} font-size=${63 * scale} stroke-width="14"
      textLength=${full * scale * U} lengthAdjust="spacingAndGlyphs">${this.number}</text>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-tag': Tag } }
