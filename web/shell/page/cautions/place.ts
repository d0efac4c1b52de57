import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CautionView, Id, Step } from '../../bridge/protocol';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/empty';
import '../kit/head';
import '../kit/section';
import '../kit/tag';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';
import type { Address } from '../places';
import '../styles/cautions.css';
import { words } from '../words';
import './cautions';

const MOST = 6;

/** All hazards of the job by the step that carries them, with what brings them about. */
@customElement('asf-place-cautions')
export class PlaceCautions extends LightElement {
  @property({ attribute: false }) address?: Address;
  private readonly steps: readonly (readonly [Step, Live<'cautions'>])[] = words().cautions.order.map((step) => [step, new Live(this, 'cautions', () => ({ ask: 'cautions', step }))] as const);
  private readonly parts = new Live(this, 'parts', () => ({ ask: 'parts' }));
  private readonly assemblies = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().cautions;
    const known = this.steps.every(([, live]) => live.view);
    const all = new Set(this.steps.flatMap(([, live]) => (live.view?.cautions ?? []).map(({ hazard }) => hazard)));
    const unread = new Set(this.steps.flatMap(([, live]) => (live.view?.cautions ?? []).filter(({ acknowledged }) => !acknowledged).map(({ hazard }) => hazard)));
    return html`<asf-head .name=${say.title} .second=${all.size ? (unread.size ? say.unread(unread.size) : say.allRead(all.size)) : ''} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body cautions-body"><p class="reckoned"><b>${say.standing}</b></p>
        ${known && all.size === 0 ? html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>` : this.steps.map(([step, live]) => this.step(step, live.view?.cautions ?? []))}</div>`;
  }

  private step(step: Step, cautions: readonly CautionView[]): TemplateResult | typeof nothing {
    if (cautions.length === 0) return nothing;
    const say = words().cautions;
    return html`<asf-section .label=${say.step[step]} .count=${say.open(cautions.length)}><asf-caution-lines .label=${`${say.title}: ${say.step[step]}`} .cautions=${cautions} .because=${this.because}></asf-caution-lines></asf-section>`;
  }

  private readonly because = (ids: readonly Id[]): TemplateResult => {
    const say = words().cautions;
    const rows = this.parts.view?.rows ?? [];
    const assemblies = this.assemblies.view?.assemblies ?? [];
    const links = ids.slice(0, MOST).map((id) => {
      const part = rows.find((row) => row.id === id);
      if (part) return html`<a href="#/part/${id}">${tagFigures(part.tag)} ${part.name}</a>`;
      const assembly = assemblies.find(({ record }) => record.id === id);
      return assembly ? html`<a href="#/before/${id}">${assembly.record.values.name ?? words().assemblies.unnamed}</a>` : nothing;
    });
    return html`<p class="caution-because"><b>${say.because}</b> ${links.map((link, i) => html`${i > 0 ? ', ' : ''}${link}`)}${ids.length > MOST ? ` ${say.others(ids.length - MOST)}` : ''}</p>`;
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-cautions': PlaceCautions } }
