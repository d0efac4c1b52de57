import { html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Dimension, Limits, Measured, Proof, Units } from '../../bridge/protocol';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { figures, said } from './amount';
import { scaleOf, type Scale } from './scale';

const [WIDTH, TOP, BASE] = [340, 58, 88];
/** Room for the name of a limit. */
const NAME = 104;
let lines = 0;

/** A reading on its number line: the limit with its name, the bad side hatched, the guard band filled, the interval as a bracket. */
@customElement('asf-number-line')
export class NumberLine extends LightElement {
  @property({ attribute: false }) measured?: Measured;
  @property({ attribute: false }) proof?: Proof;
  @property({ attribute: false }) limits?: Limits;
  @property() dimension: Dimension = 'length';
  @property() units: Units = 'metric';
  private readonly hatch = `nl-hatch-${++lines}`;

  override render(): TemplateResult | typeof nothing {
    const { measured, proof, limits } = this;
    if (!measured || !limits) return nothing;
    const ends = [limits.discard.least, limits.discard.most].filter((end) => end !== undefined);
    const around = [measured.value - measured.expanded, measured.value + measured.expanded];
    const guards = ends.flatMap((end) => [end - (proof?.guard ?? 0), end + (proof?.guard ?? 0)]);
    const scale = scaleOf([...around, ...ends, ...guards], WIDTH, this.dimension === 'length' ? (this.units === 'inch' ? 25.4e6 : 1e6) : this.dimension === 'force' ? 1e3 : 1);
    return html`<figure class="number-line" role="img" aria-label=${this.told(measured, ends, proof)}>
      <svg viewBox="0 0 ${WIDTH} 112" width="100%" aria-hidden="true" focusable="false">
        <defs><pattern id=${this.hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="7" class="nl-hatch-line"></line></pattern></defs>
        ${this.sides(scale, limits, proof)}
        <line class="nl-base" x1="0" y1=${BASE} x2=${WIDTH} y2=${BASE}></line>
        ${scale.ticks.map((tick) => svg`<line class="nl-tick" x1=${scale.at(tick)} y1=${BASE} x2=${scale.at(tick)} y2=${BASE + 6}></line><text class="nl-figure" x=${scale.at(tick)} y=${BASE + 22} text-anchor=${anchor(scale.at(tick))}>${figures(tick, this.dimension, this.units)}</text>`)}
        ${ends.map((end) => this.limit(scale, end, measured.value))}
        ${this.reading(scale, measured)}
      </svg></figure>`;
  }

  private sides(scale: Scale, { discard: { least, most } }: Limits, proof: Proof | undefined): TemplateResult {
    const guard = proof?.guard ?? 0;
    const box = (from: number, to: number, kind: string): TemplateResult => {
      const [a, b] = [Math.max(0, Math.min(WIDTH, from)), Math.max(0, Math.min(WIDTH, to))];
      return svg`<rect class=${kind} fill=${kind === 'nl-bad' ? `url(#${this.hatch})` : nothing} x=${a} y=${TOP} width=${Math.max(0, b - a)} height=${BASE - TOP}></rect>`;
    };
    return svg`${least === undefined ? nothing : [box(0, scale.at(least - guard), 'nl-bad'), box(scale.at(least - guard), scale.at(least + guard), 'nl-guard')]}
      ${most === undefined ? nothing : [box(scale.at(most + guard), WIDTH, 'nl-bad'), box(scale.at(most - guard), scale.at(most + guard), 'nl-guard')]}`;
  }

  private limit(scale: Scale, end: number, value: number): TemplateResult {
    const x = scale.at(end);
    // Its name stands away from the reading, as far as there is room for it.
    const left = (end <= value && x > NAME) || x > WIDTH - NAME;
    const [dx, side] = left ? [-10, 'end'] : [10, 'start'];
    return svg`<line class="nl-limit" x1=${x} y1="46" x2=${x} y2=${BASE + 6}></line><path class="nl-pointer" d="M${x - 7} 42h14l-7 12z"></path>
      <text class="nl-name" x=${x + dx} y="50" text-anchor=${side}>${words().measures.limitWord} ${figures(end, this.dimension, this.units)}</text>`;
  }

  private reading(scale: Scale, { value, expanded }: Measured): TemplateResult {
    const [x, a, b, y] = [scale.at(value), scale.at(value - expanded), scale.at(value + expanded), (TOP + BASE) / 2];
    return svg`<line class="nl-stem" x1=${x} y1="26" x2=${x} y2=${y}></line>
      <path class="nl-bracket" d="M${a} ${y - 7}v14M${a} ${y}H${b}M${b} ${y - 7}v14"></path>
      <path class="nl-diamond" d="M${x} ${y - 9}l9 9-9 9-9-9z"></path>
      <text class="nl-value" x=${x} y="20" text-anchor=${anchor(x)}>${figures(value, this.dimension, this.units)}</text>`;
  }

  private told(measured: Measured, ends: readonly number[], proof: Proof | undefined): string {
    const say = words().measures;
    const verdict = proof ? { 'proved-good': say.proved.good, 'proved-bad': say.proved.bad, 'not-proved': say.proved.nothing }[proof.proved] : '';
    return say.line(said(measured.value, this.dimension, this.units), ends.map((end) => said(end, this.dimension, this.units)).join(', '), verdict);
  }
}

function anchor(x: number): string {
  return x < 40 ? 'start' : x > WIDTH - 40 ? 'end' : 'middle';
}

declare global { interface HTMLElementTagNameMap { 'asf-number-line': NumberLine } }
