import { html, svg, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../words';
import type { Confidence } from '../words/confidence';
import './key';
import { LightElement } from './light-element';

/** The sums of a bar in words, for its text twin. */
export interface BarWords { cash: string; ownTime: string; risk: string; again?: string; low?: string; high?: string }

const HIGH = 16;
const HATCH = 7;

/** What a route costs: solid cash, hatched own time, open risk, dotted what is done again later; below it the bracket of 8 cases in 10. All bars of a list share `scale`. */
@customElement('asf-route-bar')
export class RouteBar extends LightElement {
  @property() route = '';
  @property({ type: Number }) cash = 0;
  @property({ type: Number }) ownTime = 0;
  @property({ type: Number }) risk = 0;
  /** Done again when its life ends. */
  @property({ type: Number }) again = 0;
  @property({ type: Number }) low?: number;
  @property({ type: Number }) high?: number;
  /** The figure at the right end of the common scale. */
  @property({ type: Number }) scale = 1;
  @property() total = '';
  @property({ attribute: false }) parts?: BarWords;
  @property() how: Confidence = 'sure';
  @property({ type: Boolean }) cheapest = false;
  /** Why it is not to be had: the row stays, without a bar. */
  @property() reason = '';
  @property({ type: Boolean }) struck = false;
  @property() key = '';
  @property({ type: Number, state: true }) private wide = 0;

  private watcher: ResizeObserver | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.watcher = new ResizeObserver(([entry]) => { this.wide = entry ? Math.floor(entry.contentRect.width) : 0; });
    this.watcher.observe(this);
  }

  override disconnectedCallback(): void {
    this.watcher?.disconnect();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words();
    return html`<div class="route-head">
      ${this.key ? html`<asf-key name=${this.key} ?idle=${this.reason !== ''}></asf-key>` : nothing}
      <span class="route-name ${this.struck ? 'route-struck' : ''} ${this.reason ? 'route-held' : ''}">${this.route}</span>
      ${this.cheapest ? html`<span class="flag">${say.kit.cheapest}</span>` : nothing}
      <span class="route-total">${this.how === 'sure' ? nothing : html`<span class="route-how">${say.confidence.word[this.how]} </span>`}<b>${this.total}</b></span>
    </div>
    ${this.reason ? html`<p class="second">${this.reason}</p>` : html`${this.bar()}<span class="unseen">${this.twin()}</span>`}`;
  }

  private twin(): string {
    if (!this.parts) return '';
    const say = words().routes;
    const { cash, ownTime, risk, again, low, high } = this.parts;
    return [say.bar(cash, ownTime, risk), again ? say.againLater(again) : '', low && high ? say.bracket(low, high) : ''].filter(Boolean).join('; ');
  }

  private bar(): TemplateResult {
    const unit = this.scale > 0 ? Math.max(0, this.wide - 2) / this.scale : 0;
    const [a, b, c] = [this.cash * unit, (this.cash + this.ownTime) * unit, (this.cash + this.ownTime + this.risk) * unit];
    const end = (this.cash + this.ownTime + this.risk + this.again) * unit;
    return html`<svg class="route-bar" height="30" width=${this.wide} aria-hidden="true">
      <g transform="translate(1 1)">
        ${end - c > 0.5 ? svg`<rect class="bar-again" x=${c} y="0" width=${end - c} height=${HIGH} />` : nothing}
        <rect class="bar-open" x="0" y="0" width=${Math.max(c, 1)} height=${HIGH} />
        ${hatched(a, b)}
        <rect class="bar-cash" x="0" y="0" width=${a} height=${HIGH} />
        ${b - a > 0.5 ? svg`<rect class="bar-line" x=${a} y="0" width=${b - a} height=${HIGH} />` : nothing}
        ${this.bracket(unit)}
      </g></svg>`;
  }

  private bracket(unit: number): TemplateResult | typeof nothing {
    if (this.low === undefined || this.high === undefined || this.high <= this.low) return nothing;
    const [from, to] = [this.low * unit, Math.min(this.high, this.scale) * unit];
    return svg`<path class="bar-bracket" d="M${from} 19V26M${from} 22.5H${to}M${to} 19V26" />`;
  }
}

// Lines at 45° between two places of the bar, cut off at its ends.
function hatched(from: number, to: number): TemplateResult | typeof nothing {
  if (to - from < 1) return nothing;
  const lines: string[] = [];
  for (let foot = from - HIGH + HATCH / 2; foot < to; foot += HATCH) {
    const [x1, x2] = [Math.max(foot, from), Math.min(foot + HIGH, to)];
    if (x2 > x1) lines.push(`M${x1} ${HIGH - (x1 - foot)}L${x2} ${HIGH - (x2 - foot)}`);
  }
  return svg`<path class="bar-hatch" d=${lines.join('')} />`;
}

declare global { interface HTMLElementTagNameMap { 'asf-route-bar': RouteBar } }
