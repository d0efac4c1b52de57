import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { PartView, SplitOff } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/choice';
import '../kit/dialog';
import '../kit/field';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { partRow } from '../parts/part-row';
import { Pictures } from '../pictures';
import { words } from '../words';

const MOST = 6;

/** One tag becomes several; and the ones it was split from or into. */
@customElement('asf-sheet-split')
export class SheetSplit extends LightElement {
  @property({ attribute: false }) view?: PartView;
  @state() private open = false;
  @state() private names: readonly string[] = [''];
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult | typeof nothing {
    if (!this.view) return nothing;
    const say = words().sheet.split;
    const { split, record } = this.view;
    return html`<asf-section .label=${say.title}>
      ${split.length ? html`<p class="second">${record.values.split_from ? say.from : say.into}</p>` : nothing}
      <ul>${split.map((line) => html`<li>${partRow(line, { picture: line.photo ? this.pictures.small(line.photo) : '', href: `#/part/${line.id}` })}</li>`)}</ul>
      <asf-button icon="split" word=${say.title} @click=${() => { this.names = [record.values.name ?? '']; this.open = true; }}></asf-button>
      <asf-dialog .open=${this.open} .label=${say.title} .body=${this.open ? this.form() : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog></asf-section>`;
  }

  private form(): TemplateResult {
    const say = words().sheet.split;
    const counts = Array.from({ length: MOST }, (_, i) => ({ value: String(i + 1), word: String(i + 1) }));
    return html`<p class="reckoned">${say.lead}</p>
      <form class="place-form" @submit=${this.split}>
        <asf-choice columns="3" .label=${say.how} .options=${counts} .value=${String(this.names.length)} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.resize(Number(event.detail.value)); }}></asf-choice>
        ${this.names.map((name, i) => html`<asf-field .label=${say.name(i + 1)} .value=${name} max="200" @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) this.rename(i, event.target.value); }}></asf-field>`)}
        <asf-primary small kind="submit" verb=${say.go} icon="split"></asf-primary></form>`;
  }

  private resize(count: number): void {
    this.names = Array.from({ length: count }, (_, i) => this.names[i] ?? this.view?.record.values.name ?? '');
  }

  private rename(at: number, name: string): void {
    this.names = this.names.map((one, i) => (i === at ? name : one));
  }

  private readonly split = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (!this.view) return;
    const own = this.view.record.values.name ?? '';
    const into = this.names.map((name): SplitOff => ({ id: newId(), ...(name.trim() && name.trim() !== own && { name: name.trim() }) }));
    const { ok } = await carryOut({ do: 'split', part: this.view.record.id, into }, words().sheet.split.done(into.length));
    if (ok) this.open = false;
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-sheet-split': SheetSplit } }
