import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Build, Change, Lift, PartView, RecordView, WhereView } from '../../bridge/protocol';
import '../kit/choice';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { words } from '../words';
import './edit-line';
import { massText, massUnit } from './mass';
import { lengthUnit, readSize, sizeText } from './size';
import { seenOf, write } from './write';
import { carryOut } from '../carry-out';

const MARKS = ['oiled', 'wrapped', 'fragile', 'two'] as const;
type Mark = (typeof MARKS)[number];
const BUILDS: readonly (Build | '')[] = ['solid', 'hollow', 'sheet', ''];

/** How a part is kept and lifted: oiled, wrapped, fragile, by two; its size and build, and the mass guessed from them. */
@customElement('asf-sheet-care')
export class SheetCare extends LightElement {
  @property({ attribute: false }) view: PartView | undefined;
  @property({ attribute: false }) known: WhereView | undefined;
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const say = words().where.care;
    const { values, id } = view.record;
    const lift = this.known?.part.care.lift;
    const set = MARKS.filter((mark) => (mark === 'two' ? lift === 'two' : values[mark]));
    const size = values.long && values.wide && values.high ? sizeText([values.long, values.wide, values.high], this.units) : '';
    return html`<asf-section .label=${say.title}>
      <asf-choice many hide-label columns="2" .label=${say.marks} .options=${MARKS.map((value) => ({ value, word: say[value] }))} .values=${live(set)} @asf-change=${this.marked}></asf-choice>
      <p class="reckoned">${this.mass()} ${this.lifting(lift)}</p>
      <asf-edit-line .label=${say.size} .value=${size} .shown=${size ? words().where.mass(size, lengthUnit(this.units)) : ''} .unit=${lengthUnit(this.units)} .hint=${say.sizeHint} key="part/${id}/size" .record=${view.record} .save=${this.sized}></asf-edit-line>
      <asf-choice compact columns="4" .label=${say.build} .options=${BUILDS.map((value) => ({ value, word: value ? say.builds[value] : say.notSaid }))} .value=${live(values.build ?? '')} @asf-change=${this.built}></asf-choice></asf-section>`;
  }

  private get units(): 'metric' | 'inch' {
    return this.head.view?.settings.units ?? 'metric';
  }

  private mass(): string {
    const say = words().where;
    const { heft } = this.known ?? {};
    const tell = (grams: number): string => say.mass(massText(rounded(grams), this.units), massUnit(this.units));
    if (!heft) return say.care.noGuess;
    const { guess } = heft;
    if (!guess) return say.care.known(say.mass(massText(heft.mass, this.units), massUnit(this.units)));
    return [say.care.guess(tell(heft.mass), tell(guess.least), tell(guess.most)), guess.any_build ? say.care.guessWide : ''].filter(Boolean).join(' ');
  }

  private lifting(lift: Lift | undefined): TemplateResult | typeof nothing {
    const say = words().where.care;
    return lift ? html`<b>${say.lift[lift]}</b>${lift === 'alone' ? nothing : ` ${say.liftSource}`}` : nothing;
  }

  private readonly marked = async (event: CustomEvent<{ value: Mark; values: readonly string[] }>): Promise<void> => {
    const say = words().where.care;
    const { value, values } = event.detail;
    const on = values.includes(value);
    // What was not stored is not shown as chosen.
    if (this.view && !await write(this.view.record, [marking(value, on)], on ? say.set(say[value]) : say.unset(say[value]))) this.requestUpdate();
  };

  private readonly built = async (event: CustomEvent<{ value: Build | '' }>): Promise<void> => {
    const build = event.detail.value;
    if (this.view && !await write(this.view.record, [build ? { build } : { clear: 'build' }], words().where.care.builtSaved)) this.requestUpdate();
  };

  private readonly sized = async (text: string, record?: RecordView): Promise<string | null> => {
    const say = words().where.care;
    if (!record) return null;
    const size = text.trim() ? readSize(text, this.units) : undefined;
    if (size === null) return say.sizeWrong;
    const changes: Change[] = size ? [{ long: size[0] }, { wide: size[1] }, { high: size[2] }] : [{ clear: 'long' }, { clear: 'wide' }, { clear: 'high' }];
    const { ok } = await carryOut({ do: 'change', ids: [record.id], changes, seen: seenOf(record, changes) }, size ? say.saved : say.cleared);
    return ok ? '' : null;
  };
}

/** A guess has no more than two figures that mean anything. */
function rounded(grams: number): number {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(grams, 1))) - 1);
  return Math.round(grams / step) * step;
}

function marking(mark: Mark, on: boolean): Change {
  switch (mark) {
    case 'oiled': return { oiled: on };
    case 'wrapped': return { wrapped: on };
    case 'fragile': return { fragile: on };
    case 'two': return { two_person: on };
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-care': SheetCare } }
