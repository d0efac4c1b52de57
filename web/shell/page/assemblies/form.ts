import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { AssemblyLine, Change, Command, Side } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { readStage } from '../words/read';

type SideChoice = Side | 'none';

/** One assembly: its name, its side, what it is inside. Tells `asf-made` once it is recorded. */
@customElement('asf-assembly-form')
export class AssemblyForm extends LightElement {
  /** The one being changed; nothing for a new one. */
  @property({ attribute: false }) line: AssemblyLine | null = null;
  @property({ attribute: false }) others: readonly AssemblyLine[] = [];
  @property({ attribute: false }) vehicle: string | null = null;
  @state() private name: string | null = null;
  @state() private side: SideChoice | null = null;
  @state() private inside: string | null = null;
  @state() private stage: string | null = null;
  @state() private stageError = '';
  @state() private error = '';
  private busy = false;

  override render(): TemplateResult {
    const text = words().assemblies;
    const key = this.key;
    return html`<form class="as-form" @submit=${this.save}>
      <asf-field label=${text.name} error=${this.error} max="200" .value=${this.nameNow} .suggestions=${text.likelyNames}
        @input=${(event: Event) => { this.name = textOf(event); this.error = ''; journal.typing(key, this.name); }}></asf-field>
      ${this.line ? nothing : html`<asf-choice .label=${text.likely} columns="3" .value=${this.nameNow} .options=${text.likelyNames.map((value) => ({ value, word: value }))}
        @asf-change=${(event: CustomEvent<{ value: string }>) => { this.name = event.detail.value; journal.typing(key, this.name); }}></asf-choice>`}
      <asf-choice .label=${text.side} columns="3" .value=${this.sideNow} .options=${(['left', 'right', 'none'] as const).map((value) => ({ value, word: text.sides[value] }))}
        @asf-change=${(event: CustomEvent<{ value: SideChoice }>) => { this.side = event.detail.value; }}></asf-choice>
      ${this.insideChoice()}
      ${this.line ? html`<asf-field kind="number" .label=${text.stage} .hint=${text.stageHint} .value=${this.stageNow} .error=${this.stageError} max="2" @input=${(event: Event) => { this.stage = textOf(event); this.stageError = ''; }}></asf-field>` : nothing}
      <asf-primary kind="submit" verb=${this.line ? text.save : text.make}></asf-primary>
      ${this.line ? html`<asf-button icon="strike" word=${text.strike} @click=${this.strike}></asf-button>` : nothing}
    </form>`;
  }

  private get key(): string {
    return `assembly:${this.line?.record.id ?? 'new'}`;
  }

  private get nameNow(): string {
    return this.name ?? journal.typedBefore(this.key) ?? this.line?.record.values.name ?? '';
  }

  private get sideNow(): SideChoice {
    return this.side ?? this.line?.record.values.side ?? 'none';
  }

  private get insideNow(): string {
    return this.inside ?? this.line?.record.values.inside ?? '';
  }

  private get stageNow(): string {
    return this.stage ?? (this.line?.record.values.stage === undefined ? '' : String(this.line.record.values.stage));
  }

  private insideChoice(): TemplateResult | typeof nothing {
    const text = words().assemblies;
    const others = this.others.filter(({ record }) => record.id !== this.line?.record.id);
    if (others.length === 0) return nothing;
    return html`<asf-choice .label=${text.inside} columns="2" .value=${this.insideNow}
      .options=${[{ value: '', word: text.insideNone }, ...others.map(({ record, side }) => ({ value: record.id, word: record.values.name ?? text.unnamed, ...(side && { second: words().sides[side] }) }))]}
      @asf-change=${(event: CustomEvent<{ value: string }>) => { this.inside = event.detail.value; }}></asf-choice>`;
  }

  private readonly save = async (event: Event): Promise<void> => {
    event.preventDefault();
    const text = words().assemblies;
    const name = this.nameNow.trim();
    if (!name) { this.error = text.nameMissing; return; }
    if (this.stageNow.trim() && readStage(this.stageNow) === null) { this.stageError = text.wrongStage; return; }
    if (this.busy) return;
    this.busy = true;
    const id = this.line?.record.id ?? newId();
    const { ok } = await carryOut(this.command(id, name), this.line ? text.changed(name) : text.made(name));
    this.busy = false;
    if (!ok) return;
    journal.typed(this.key);
    this.tell('asf-made', { id });
  };

  private command(id: string, name: string): Command {
    const { sideNow: side, insideNow: inside, line, vehicle } = this;
    if (!line) {
      return { do: 'create', id, kind: 'assembly', changes: [{ name }, { open: true }, ...(side === 'none' ? [] : [{ side }]), ...(inside ? [{ inside }] : []), ...(vehicle ? [{ vehicle }] : [])] };
    }
    const { values, seen } = line.record;
    const changes: Change[] = [];
    if (name !== values.name) changes.push({ name });
    if (side !== (values.side ?? 'none')) changes.push(side === 'none' ? { clear: 'side' } : { side });
    if (inside !== (values.inside ?? '')) changes.push(inside ? { inside } : { clear: 'inside' });
    const stage = readStage(this.stageNow) ?? undefined;
    if (stage !== values.stage) changes.push(stage === undefined ? { clear: 'stage' } : { stage });
    // Saved unchanged: the name is written once more, so that there is an answer.
    return { do: 'change', ids: [id], changes: changes.length > 0 ? changes : [{ name }], seen };
  }

  private readonly strike = async (): Promise<void> => {
    if (!this.line) return;
    const { id, values } = this.line.record;
    const isStruck = await strikeOut(this.line.record, words().assemblies.struck(values.name ?? words().assemblies.unnamed));
    if (isStruck) this.tell('asf-made', { id });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-assembly-form': AssemblyForm } }
