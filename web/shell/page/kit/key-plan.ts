import { html, svg, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';

export type Corner = 'front-left' | 'front-right' | 'rear-left' | 'rear-right' | 'front' | 'rear' | 'left' | 'right' | '';

const WHEELS: readonly [Corner, number, number][] = [['front-left', 1, 12], ['front-right', 29, 12], ['rear-left', 1, 41], ['rear-right', 29, 41]];

/** The vehicle from above, nose up: the wheel or end meant is filled, a dot shows where the driver sits. A drawing; the word stands beside it. */
@customElement('asf-key-plan')
export class KeyPlan extends LightElement {
  @property() at: Corner = '';
  @property() driver: 'left' | 'right' = 'right';
  @property({ type: Number }) width = 29;

  override render(): TemplateResult {
    return html`<svg class="key-plan" viewBox="0 0 38 58" width="${this.width / 16}rem" height="${(this.width * 58) / 38 / 16}rem" aria-hidden="true">
      <path class="plan-body" d="M5 56.5V13C5 5 10 2 19 2S33 5 33 13V56.5Z" />
      ${this.end()}
      <path class="plan-line" d="M5 23C11 19 27 19 33 23M5 32H33" />
      ${WHEELS.map(([corner, x, y]) => svg`<rect class="plan-wheel" x=${x + 2} y=${y + 1} width="4" height="12" />${
        this.means(corner) ? svg`<rect class="plan-here" x=${x} y=${y - 1} width="8" height="16" />` : nothing}`)}
      <circle class="plan-driver" cx=${this.driver === 'left' ? 12.5 : 25.5} cy="27" r="2.6" />
    </svg>`;
  }

  private means(corner: Corner): boolean {
    return this.at === corner || ((this.at === 'left' || this.at === 'right') && corner.endsWith(this.at));
  }

  private end(): unknown {
    if (this.at === 'front') return svg`<path class="plan-here" d="M5 22V13C5 5 10 2 19 2S33 5 33 13V22Z" />`;
    return this.at === 'rear' ? svg`<path class="plan-here" d="M5 38H33V56.5H5Z" />` : nothing;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-key-plan': KeyPlan } }
