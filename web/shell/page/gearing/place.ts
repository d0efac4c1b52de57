import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { GearingLine, GearRow, Units } from '../../bridge/protocol';
import { textOf } from '../field-text';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/choice';
import '../kit/dialog';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/icon';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import { noteOpen, openBefore } from '../reopening';
import '../sheet/conflict';
import '../styles/gearing.css';
import '../styles/routes.css';
import '../styles/sheet.css';
import '../styles/stores.css';
import { words } from '../words';
import { KEEP, number } from '../words/format';
import { readNumber } from '../words/read';
import './chart';
import './form';
import { gearSaid, mindSaid, ratiosSaid, rollingSaid, speedSaid, swapSaid } from './said';

const PLACE = 'gearing';
/** How far the lines are drawn where nobody said how fast the engine turns. */
const USUAL_MOST = 5000;

/** Gearings before and after a swap, drawn side by side, gear by gear. */
@customElement('asf-place-gearing')
export class PlaceGearing extends LightElement {
  @property({ attribute: false }) address?: Address;
  /** The gearing whose form is open; `new` for one more. */
  @state() private open = openBefore(PLACE);
  /** Which one is compared with the one before. */
  @state() private shown = '';
  @state() private speed = '';
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly live = new Live(this, 'gearing', () => {
    const speed = this.asked;
    return { ask: 'gearing', unit: this.units === 'inch' ? 'mph' : 'kmh', ...(speed !== null && { speed }) };
  });
  private readonly keeping = new KeepingWord(this);
  private told: Units | undefined;

  private get units(): Units { return this.head.view?.settings.units ?? 'metric'; }

  /** The road speed that was typed, where it is one. */
  private get asked(): number | null {
    const speed = readNumber(this.speed);
    return speed !== null && speed > 0 && speed <= 500 ? speed : null;
  }

  override willUpdate(): void {
    // The speed is told in the unit of the job, which may come after the question.
    if (this.told !== this.units && this.asked !== null) this.live.soon();
    this.told = this.units;
  }

  override disconnectedCallback(): void {
    noteOpen(PLACE, '');
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().gearing;
    const { view } = this.live;
    const sets = view?.sets ?? [];
    const record = sets.find((one) => one.record.id === this.open)?.record;
    const isOpen = this.open === 'new' || record !== undefined;
    const form = (): TemplateResult => html`<asf-gearing-form .record=${record} .units=${this.units} .swap=${sets.some((one) => one.record.values.swap === 'before') ? (sets.some((one) => one.record.values.swap === 'after') ? 'candidate' : 'after') : 'before'} .like=${sets[0]?.record} @asf-put=${() => { this.form(''); }}></asf-gearing-form>`;
    return html`<asf-head .name=${say.title} .second=${sets.length ? say.second(sets.length) : ''} back="#/plan" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body gearing-body">${view && this.head.view ? (sets.length ? this.all(sets) : html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>`) : nothing}</div>
      <div class="foot"><asf-primary .verb=${say.add} icon="add" @click=${() => { this.form('new'); }}></asf-primary></div>
      <asf-dialog .open=${isOpen} .label=${record ? say.change : say.add} .body=${isOpen && this.head.view ? form() : nothing} @asf-close=${() => { this.form(''); }}></asf-dialog>`;
  }

  private all(sets: readonly GearingLine[]): TemplateResult {
    const say = words().gearing;
    const others = sets.filter((set) => set.against !== undefined && set.against !== null);
    const after = others.find((set) => set.record.id === this.shown) ?? others[0];
    const before = sets.find((set) => set.record.id === after?.against?.before);
    const alone = after ? undefined : sets.find((set) => set.rows.length > 0);
    const now = after ?? alone;
    return html`<div class="gearing-columns"><div>
        ${others.length > 1 ? html`<asf-choice columns="2" .label=${say.compared} .options=${others.map(({ record }) => ({ value: record.id, word: record.values.name ?? say.noName, second: record.values.swap ? say.swaps[record.values.swap] : say.noSwap }))} .value=${after?.record.id ?? ''} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.shown = event.detail.value; }}></asf-choice>` : nothing}
        ${now ? this.compared(before, now) : nothing}
        ${sets.length === 1 ? html`<p class="reckoned">${say.onlyOne}</p>` : !after && !sets.some((set) => set.record.values.swap === 'before') ? html`<p class="reckoned">${say.noBefore}</p>` : nothing}</div>
      <div>${now ? this.minded(before, now) : nothing}${this.listed(sets)}</div></div>`;
  }

  private compared(before: GearingLine | undefined, after: GearingLine): TemplateResult {
    const say = words().gearing;
    const said = swapSaid(before, after, this.units);
    const names = [before, after].flatMap((set) => set?.record.values.name ?? []);
    const most = Math.max(...[before, after].map((set) => set?.record.values.highest_turns ?? 0)) || USUAL_MOST;
    return html`<asf-section .label=${names.join(' → ')}>
      ${said ? html`<p class="reckoned gearing-said">${said.figures} ${said.change ? html`<b>${said.change}</b>` : nothing} ${said.rest}</p>` : nothing}</asf-section>
      <asf-section .label=${say.chart}><asf-gearing-chart .was=${before?.rows ?? []} .now=${after.rows} .names=${names} .most=${most} .units=${this.units} .speed=${this.asked ?? 0}></asf-gearing-chart></asf-section>
      <asf-section .label=${say.table.caption}>
        ${this.table(before, after)}
        <asf-field class="gearing-speed" kind="number" .label=${say.speed} .unit=${say.unit[this.units]} .hint=${say.speedHint(say.unit[this.units])} .value=${this.speed} .error=${this.speed.trim() && this.asked === null ? say.wrongSpeed : ''} max="10"
          @input=${(event: Event) => { this.speed = textOf(event); this.live.soon(); }}></asf-field></asf-section>`;
  }

  /** Gear by gear: what the drawing shows, in figures. */
  private table(before: GearingLine | undefined, after: GearingLine): TemplateResult {
    const say = words().gearing;
    const { units } = this;
    const unit = say.unit[units];
    const key = (row: GearRow): string => `${row.gear}${row.overdriven ? '+' : ''}`;
    const was = new Map((before?.rows ?? []).map((row) => [key(row), row]));
    const is = new Map(after.rows.map((row) => [key(row), row]));
    const all = [...new Set([...was.keys(), ...is.keys()])].sort((one, other) => parseInt(one, 10) - parseInt(other, 10) || one.length - other.length);
    const asked = this.asked !== null && this.live.view?.kmh !== undefined;
    const cell = (value: string): TemplateResult => html`<td>${value || '–'}</td>`;
    const speed = (row: GearRow | undefined): string => (row ? speedSaid(row, units) : '');
    // What the engine cannot turn is no figure to read off.
    const turns = (set: GearingLine | undefined, row: GearRow | undefined): string => (row?.turns === undefined ? '' : row.turns > (set?.record.values.highest_turns ?? Infinity) ? say.table.over : number(row.turns));
    const at = say.table.at(`${this.speed.trim()}${KEEP}${unit}`);
    const pair = before ? 2 : 1;
    const each = html`${before ? html`<th scope="col">${say.table.before}</th>` : nothing}<th scope="col">${before ? say.table.after : say.table.now}</th>`;
    return html`<div class="gearing-table"><table>
      <caption class="unseen">${say.table.caption}</caption>
      <thead><tr><td></td><th scope="colgroup" colspan=${pair}>${say.per1000(unit)}</th>${before ? html`<td></td>` : nothing}${asked ? html`<th scope="colgroup" colspan=${pair}>${at}</th>` : nothing}</tr>
        <tr><th scope="col">${say.table.gear}</th>${each}${before ? html`<th scope="col">${say.table.change}</th>` : nothing}${asked ? each : nothing}</tr></thead>
      <tbody>${all.map((one) => {
        const [old, now] = [was.get(one), is.get(one)];
        const rows = now ? after.rows : before?.rows ?? [];
        const row = now ?? old;
        return html`<tr><th scope="row">${row ? gearSaid(row, rows) : one}</th>${before ? cell(speed(old)) : nothing}<td class="gearing-now">${speed(now) || '–'}</td>${before ? cell(now?.change === undefined ? '' : signed(now.change)) : nothing}
          ${asked ? html`${before ? cell(turns(before, old)) : nothing}<td class="gearing-now">${turns(after, now) || '–'}</td>` : nothing}</tr>`;
      })}</tbody></table></div>${asked && all.some((one) => [turns(before, was.get(one)), turns(after, is.get(one))].includes(say.table.over)) ? html`<p class="second least">${say.table.overMeans}</p>` : nothing}`;
  }

  private minded(before: GearingLine | undefined, after: GearingLine): TemplateResult {
    const say = words().gearing;
    const mind = mindSaid(before, after, this.units);
    return html`${mind.length ? html`<asf-section .label=${say.mind}><ul class="gearing-mind">${mind.map((one) => html`<li><asf-icon name="caution" size="20"></asf-icon><span class="reckoned">${one}</span></li>`)}</ul></asf-section>` : nothing}
      <asf-section .label=${say.tyres}>${this.tyresOf(before, after)}</asf-section>`;
  }

  /** The same tyre on both is told once. */
  private tyresOf(before: GearingLine | undefined, after: GearingLine): TemplateResult {
    const [was, is] = [before && rollingSaid(before, this.units), rollingSaid(after, this.units)];
    const same = was && is && JSON.stringify(was) === JSON.stringify(is) && before?.record.values.tyre === after.record.values.tyre;
    return same ? html`${this.tyre(after, words().gearing.both)}` : html`${before ? this.tyre(before) : nothing}${this.tyre(after)}`;
  }

  private tyre(set: GearingLine, whose = set.record.values.name): TemplateResult | typeof nothing {
    const said = rollingSaid(set, this.units);
    if (!said) return nothing;
    return html`<div class="gearing-tyre"><p><b>${[set.record.values.tyre, whose].filter(Boolean).join(', ')}</b> <span class="second">${said.how}</span></p>
      <p>${said.figures}</p>${said.notes.map((note) => html`<p class="reckoned">${note}</p>`)}</div>`;
  }

  private listed(sets: readonly GearingLine[]): TemplateResult {
    const say = words().gearing;
    return html`<asf-section .label=${say.sets} .count=${say.setsCount}><ul>${sets.map((set) => {
      const { record, needs = [], problems = [] } = set;
      const { name, swap } = record.values;
      return html`<li>${record.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict} .whose=${name ?? say.noName}></asf-conflict>`)}
        <button type="button" class="store-row gearing-row" @click=${() => { this.form(record.id); }}><span class="store-name">${name ?? say.noName}<span class="second">${ratiosSaid(set)}</span>
          ${problems.map((problem) => html`<span class="second">${words().problems.sentence(problem)}</span>`)}
          ${needs.length ? html`<span class="second">${say.needs(needs.map((field) => say.need[field] ?? words().history.field[field]))}</span>` : nothing}</span>
          <span class="store-count">${swap ? say.swaps[swap] : say.noSwap}</span><asf-icon name="next" size="20"></asf-icon></button></li>`;
    })}</ul></asf-section>`;
  }

  private form(open: string): void {
    this.open = open;
    noteOpen(PLACE, open);
  }
}

function signed(share: number): string {
  const text = number(share * 100, 1);
  return `${share > 0 && text !== '0' ? '+' : ''}${text}${KEEP}%`;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-gearing': PlaceGearing } }
