import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { CautionView, Hazard, Id, Step } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/icon';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../routes/who-dialog';
import { whoDecides } from '../routes/who-dialog';
import { say as aloud } from '../say';
import '../styles/cautions.css';
import { words } from '../words';
import { hazardBody } from './hazard';

/** Cautions: each that nobody has read is a line that opens; those that were read are one quiet line. */
@customElement('asf-caution-lines')
export class CautionLines extends LightElement {
  @property({ attribute: false }) cautions: readonly CautionView[] = [];
  /** What the whole of it is called, where more than one stands on a page. */
  @property() label = '';
  /** Where the work leaves no room: one line that names all of them, and opens to the whole of each. */
  @property({ type: Boolean }) compact = false;
  /** Says what brings a hazard about, where that is not plain from the surroundings. */
  @property({ attribute: false }) because: (ids: readonly Id[]) => unknown = () => nothing;
  /** Those that are open. */
  @state() private open: ReadonlySet<Hazard> = new Set();
  @state() private readOpen = false;
  /** The one whose reading waits for a name. */
  @state() private asking: Hazard | null = null;
  private wasRead = false;

  override willUpdate(): void {
    // Of another step: folded again.
    if (this.cautions.length === 0) this.readOpen = false;
  }

  override render(): TemplateResult | typeof nothing {
    const say = words().cautions;
    const toRead = this.cautions.filter(({ acknowledged }) => !acknowledged);
    const read = this.cautions.filter(({ acknowledged }) => acknowledged);
    if (this.cautions.length === 0) return nothing;
    if (this.compact) return this.folded([...toRead, ...read], read.length);
    return html`<section class="cautions" aria-label=${this.label || say.title}>
      ${toRead.length ? html`<ul>${toRead.map((one) => html`<li>${this.line(one)}</li>`)}</ul>` : nothing}
      ${read.length ? html`<button type="button" class="cautions-read" aria-expanded=${this.readOpen ? 'true' : 'false'} @click=${() => { this.readOpen = !this.readOpen; }}><asf-icon name="check" size="20"></asf-icon><span>${say.allRead(read.length)}</span></button>
        ${this.readOpen ? html`<ul>${read.map((one) => html`<li>${this.line(one)}</li>`)}</ul>` : nothing}` : nothing}
      ${this.asksWho()}</section>`;
  }

  private asksWho(): TemplateResult {
    return html`<asf-who-dialog .open=${this.asking !== null} .asked=${words().cautions.whoAsked} @asf-close=${() => { this.asking = null; }} @asf-who=${this.named}></asf-who-dialog>`;
  }

  /** What can happen is named whether it was read or not; never cut short. */
  private folded(all: readonly CautionView[], read: number): TemplateResult {
    const say = words().cautions;
    return html`<section class="cautions cautions-compact" aria-label=${this.label || say.title}>
      <button type="button" class="caution-line" aria-expanded=${this.readOpen ? 'true' : 'false'} @click=${() => { this.readOpen = !this.readOpen; }}>
        <asf-icon name="caution"></asf-icon><span class="caution-words">${say.few(all.length, read)}: <b>${all.map(({ hazard }) => say.named(hazard)).join(', ')}</b></span></button>
      ${this.readOpen ? html`<ul>${all.map((one) => html`<li class="caution-one">${this.whole(one)}</li>`)}</ul>` : nothing}
      ${this.asksWho()}</section>`;
  }

  private line(one: CautionView): TemplateResult {
    const { hazard, acknowledged } = one;
    const say = words().cautions;
    const isOpen = this.open.has(hazard);
    return html`<div class="caution ${acknowledged ? 'caution-read' : ''}"><button type="button" class="caution-line" aria-expanded=${isOpen ? 'true' : 'false'} @click=${() => { this.turn(hazard); }}>
        <asf-icon name="caution"></asf-icon><span class="caution-words">${say.word}: <b>${say.named(hazard)}</b></span></button>
      ${isOpen ? this.whole(one) : nothing}</div>`;
  }

  private whole({ hazard, acknowledged, because }: CautionView): TemplateResult {
    const say = words().cautions;
    return html`<div class="caution-body"><p class="caution-lead">${say.lineOf(hazard)}</p>${this.because(because)}${hazardBody(hazard, acknowledged)}
      ${acknowledged ? nothing : html`<asf-button icon="check" word=${say.read} label=${`${say.read}: ${say.lineOf(hazard)}`} @click=${() => { this.read(hazard); }}></asf-button>`}</div>`;
  }

  private turn(hazard: Hazard): void {
    const open = new Set(this.open);
    if (!open.delete(hazard)) open.add(hazard);
    this.open = open;
  }

  private read(hazard: Hazard): void {
    const who = whoDecides();
    if (who === null) this.asking = hazard;
    else void this.keep(hazard, who);
  }

  private readonly named = (event: CustomEvent<{ who: string }>): void => {
    const hazard = this.asking;
    this.asking = null;
    if (hazard) void this.keep(hazard, event.detail.who);
  };

  private async keep(hazard: Hazard, who: string): Promise<void> {
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'caution', changes: [{ hazard }, { taken: Date.now() }, ...(who ? [{ who }] : [])] });
    if (!ok) return;
    if (!this.compact) this.turn(hazard);
    else if (this.cautions.filter((one) => !one.acknowledged).length <= 1) this.readOpen = false;
    aloud(words().cautions.readSaid(words().cautions.lineOf(hazard)));
    this.wasRead = true;
  }

  // The button that had the focus is gone with its line: what comes next takes it.
  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (!this.wasRead || !changed.has('cautions')) return;
    this.wasRead = false;
    this.querySelector<HTMLElement>('.caution-line, .cautions-read')?.focus();
  }
}

/** What can hurt somebody at a step of the work on a part, else on an assembly, else on the whole job: before the step is taken. */
@customElement('asf-cautions')
export class Cautions extends LightElement {
  @property() step: Step = 'judge';
  @property({ attribute: false }) partId: Id | undefined;
  @property({ attribute: false }) assembly: Id | undefined;
  @property({ type: Boolean }) compact = false;

  private readonly live = new Live(this, 'cautions', () => ({ ask: 'cautions', step: this.step, ...(this.partId && { part: this.partId }), ...(this.assembly && { assembly: this.assembly }) }));

  override willUpdate(changed: PropertyValues<this>): void {
    if (this.hasUpdated && (changed.has('step') || changed.has('partId') || changed.has('assembly'))) this.live.anew();
  }

  override render(): TemplateResult {
    return html`<asf-caution-lines ?compact=${this.compact} .cautions=${this.live.view?.cautions ?? NONE}></asf-caution-lines>`;
  }
}

const NONE: readonly CautionView[] = [];

declare global { interface HTMLElementTagNameMap { 'asf-caution-lines': CautionLines; 'asf-cautions': Cautions } }
