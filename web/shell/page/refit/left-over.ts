import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { LeftView, Renewed } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { partRow } from '../parts/part-row';
import { tagFigures } from '../parts/tag-figures';
import { Pictures } from '../pictures';
import { words } from '../words';

/** What is left over at the end: parts nobody ticked, joints nobody ticked; and what was renewed. */
@customElement('asf-left-over')
export class LeftOver extends LightElement {
  @property({ attribute: false }) left!: LeftView;
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult {
    const say = words().commissioning.left;
    const { parts, never_ticked, renewed } = this.left;
    const n = parts.length + never_ticked.length;
    return html`<asf-section .label=${say.title} .count=${say.count(n)}>
      ${n === 0 ? html`<p class="reckoned">${say.none}</p>` : nothing}
      ${parts.length ? html`<h3 class="rf-left-head">${say.parts}</h3><ul>${parts.map((line) => html`<li>${partRow(line, { picture: line.photo ? this.pictures.small(line.photo) : '', href: `#/refit/${line.assembly ?? 'none'}?step=${line.id}` })}</li>`)}</ul>` : nothing}
      ${never_ticked.length ? html`<h3 class="rf-left-head">${say.neverTicked}</h3><ul>${never_ticked.map(({ name, part, tag, part_name, assembly, joint }) => html`<li><a class="rf-lack" href=${part ? `#/refit/${assembly ?? 'none'}?step=${part}` : openedFrom(`#/joint/${joint}`, 'refit/commissioning')}><span></span><span>${words().refit.loose.joint(name)} · ${tag === undefined ? '' : `${tagFigures(tag)} `}${part_name}</span></a></li>`)}</ul>` : nothing}
      <h3 class="rf-left-head">${say.renewed} <span class="second">${renewed.length ? '' : say.noneRenewed}</span></h3>
      <ul class="rf-renewed">${renewed.map((one) => html`<li>${this.renewed(one)}</li>`)}</ul></asf-section>`;
  }

  private renewed({ id, part, tag, name, pieces }: Renewed): TemplateResult {
    const text = html`${tag === undefined ? '' : `${tagFigures(tag)} `}${name || words().refit.onStep.pieceUnnamed}${pieces > 1 ? `, ${words().commissioning.left.pieces(pieces)}` : ''}`;
    return part ? html`<a href=${openedFrom(`#/part/${part}`, 'refit/commissioning')} data-id=${id}>${text}</a>` : html`${text}`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-left-over': LeftOver } }
