import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../cautions/cautions';
import { KeepingWord } from '../frame/keeping-word';
import type { PartLine } from '../../bridge/protocol';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { partRow } from '../parts/part-row';
import '../parts/pick';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import '../styles/parts.css';
import '../styles/plan.css';
import { words } from '../words';

/** What can be said of refitting today: the order of removal turned round, to read. */
@customElement('asf-place-refit')
export class PlaceRefit extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private assembly = '';
  private readonly assemblies = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private readonly strip = new Live(this, 'teardown', () => (this.chosen ? { ask: 'teardown', assembly: this.chosen } : null));
  private readonly pictures = new Pictures(this);
  private readonly keeping = new KeepingWord(this);
  private asked = '';

  private get chosen(): string {
    const lines = this.assemblies.view?.assemblies ?? [];
    return lines.some(({ record }) => record.id === this.assembly) ? this.assembly : lines.find(({ parts }) => parts > 0)?.record.id ?? '';
  }

  override willUpdate(): void {
    if (this.chosen === this.asked) return;
    this.asked = this.chosen;
    this.strip.anew();
  }

  override render(): TemplateResult {
    const say = words().refit;
    const lines = this.assemblies.view?.assemblies;
    return html`<asf-head .name=${say.title} .second=${say.order} .cells=${[this.keeping.cell]}></asf-head>
      <div class="body plan-body">${lines ? (this.chosen ? this.list() : html`<asf-empty .first=${lines.length ? say.none.first : say.noAssembly.first} .then=${lines.length ? say.none.then : say.noAssembly.then}><asf-button icon="teardown" word=${say.none.go} href="#/teardown"></asf-button></asf-empty>`) : nothing}
        <p class="reckoned plan-today">${say.today}</p></div>`;
  }

  private list(): TemplateResult {
    const say = words().refit;
    const options = (this.assemblies.view?.assemblies ?? []).map(({ record, depth, side }) => [record.id, `${'\u2003'.repeat(depth)}${record.values.name ?? words().parts.noName}${side ? ` ${words().sides[side]}` : ''}`] as const);
    // Parts that never stood in an order of removal are not in this one either.
    const parts: PartLine[] = [...(this.strip.view?.parts ?? [])].filter(({ standing }) => standing !== 'on').reverse();
    return html`<asf-pick .label=${say.pick} .options=${options} .value=${this.chosen} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.assembly = event.detail.value; }}></asf-pick>
      <asf-cautions step="refit" .assembly=${this.chosen}></asf-cautions>
      <asf-section .label=${say.order} .count=${say.count(parts.length)}><ol class="refit-list">${parts.map((part, i) => html`<li class="refit-step"><span class="refit-number">${i + 1}</span>${partRow(part, { picture: part.photo ? this.pictures.small(part.photo) : '', href: `#/part/${part.id}` })}</li>`)}</ol></asf-section>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-refit': PlaceRefit } }
