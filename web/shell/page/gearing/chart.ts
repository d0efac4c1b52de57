import { html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { GearRow, Units } from '../../bridge/protocol';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { number } from '../words/format';
import { BASE, drawn, HEIGHT, LEFT, RIGHT, TOP, WIDTH, type Drawing, type Line } from './lines';
import { gearShort } from './said';

/** Where the names of the lines stand. */
const [NAME_AFTER, NAME_BEFORE] = [RIGHT + 6, RIGHT + 34];

/** Road speed by engine speed, a line for each gear: before thin and dashed, after bold. The table beside it says the same. */
@customElement('asf-gearing-chart')
export class GearingChart extends LightElement {
  @property({ attribute: false }) was: readonly GearRow[] = [];
  @property({ attribute: false }) now: readonly GearRow[] = [];
  @property({ attribute: false }) names: readonly string[] = [];
  @property({ type: Number }) most = 5000;
  /** A road speed that is asked about, in the unit that is shown. */
  @property({ type: Number }) speed = 0;
  @property() units: Units = 'metric';

  override render(): TemplateResult | typeof nothing {
    if (this.now.length === 0) return nothing;
    const say = words().gearing;
    const unit = say.unit[this.units];
    const drawing = drawn(this.was, this.now, this.most, this.units);
    const over = drawing.after.some(({ row }) => row.overdriven) || drawing.before.some(({ row }) => row.overdriven);
    return html`<figure class="gearing-chart" role="img" aria-label=${say.chartSays({ names: this.names, unit })}>
      <p class="gearing-key" aria-hidden="true"><span>${say.road(unit)}</span>${this.was.length ? html`<span><svg width="30" height="8"><line class="gc-after" x1="0" y1="4" x2="30" y2="4"></line></svg> ${say.key.after}</span><span><svg width="30" height="8"><line class="gc-before" x1="0" y1="4" x2="30" y2="4"></line></svg> ${say.key.before}</span>` : nothing}</p>
      <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" width="100%" aria-hidden="true" focusable="false">
        ${drawing.speeds.map((speed) => svg`<line class="gc-grid" x1=${LEFT} y1=${drawing.y(speed)} x2=${RIGHT} y2=${drawing.y(speed)}></line><text class="gc-figure" x=${LEFT - 6} y=${drawing.y(speed) + 5} text-anchor="end">${number(speed)}</text>`)}
        ${drawing.turns.map((turns) => svg`<line class="gc-tick" x1=${drawing.x(turns)} y1=${BASE} x2=${drawing.x(turns)} y2=${BASE + 6}></line><text class="gc-figure" x=${drawing.x(turns)} y=${BASE + 22} text-anchor="middle">${number(turns)}</text>`)}
        <path class="gc-base" d="M${LEFT} ${TOP}V${BASE}H${RIGHT}"></path>
        ${drawing.before.map((line) => draw(line, drawing, 'gc-before', NAME_BEFORE))}${drawing.after.map((line) => draw(line, drawing, 'gc-after', NAME_AFTER))}
        ${this.asked(drawing)}
      </svg>
      <p class="gearing-engine" aria-hidden="true">${say.engine}${over ? ` · ${say.overdriven}` : ''}</p></figure>`;
  }

  /** Where the speed that is asked about meets the highest gear of each. */
  private asked(drawing: Drawing): TemplateResult | typeof nothing {
    const y = drawing.y(this.speed);
    if (!this.speed || y < TOP) return nothing;
    const meets = (lines: readonly Line[], kind: string): TemplateResult | typeof nothing => {
      const top = lines.find(({ row }) => row.top);
      // On the line from standing to its end, by the share of the speed there.
      const x = top ? LEFT + ((BASE - y) / (BASE - top.y)) * (top.x - LEFT) : Infinity;
      return x > RIGHT ? nothing : svg`<path class=${kind} d="M${x} ${y - 8}l8 8-8 8-8-8z"></path>`;
    };
    return svg`<line class="gc-asked" x1=${LEFT} y1=${y} x2=${RIGHT} y2=${y}></line>${meets(drawing.before, 'gc-was')}${meets(drawing.after, 'gc-is')}`;
  }
}

function draw({ row, x, y, name }: Line, { x: at, y: up }: Drawing, kind: string, place: number): TemplateResult {
  return svg`<line class="${kind} ${row.overdriven ? 'gc-over' : ''}" x1=${at(0)} y1=${up(0)} x2=${x} y2=${y}></line><text class="gc-name ${kind}-name" x=${place} y=${name + 5}>${gearShort(row)}</text>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-gearing-chart': GearingChart } }
