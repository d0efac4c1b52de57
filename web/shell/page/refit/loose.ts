import { html, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { Change, LooseJoint, ReadyView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { tagFigures } from '../parts/tag-figures';
import { write } from '../sheet/write';
import { today } from '../today';
import { words } from '../words';
import './gates';
import { figureInLine } from './hardware';

/** What is still loose, what that is in the way of, and what was tightened but not checked a second time. */
@customElement('asf-refit-loose')
export class RefitLoose extends LightElement {
  private readonly live = new Live(this, 'ready', () => ({ ask: 'ready', today: today() }));
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().refit.loose;
    const { view } = this.live;
    return html`<asf-head .name=${say.title} .second=${view ? (view.loose.length ? say.all(view.loose.length) : say.none) : ''} back="#/refit" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body rf-loose-body">${view ? this.lists(view) : nothing}</div>`;
  }

  private lists({ loose, unchecked, lowering, road }: ReadyView): TemplateResult {
    const say = words().refit.loose;
    return html`${loose.length ? html`<p class="reckoned">${say.lead}</p>` : html`<asf-empty .first=${say.empty.first} .then=${say.empty.then}></asf-empty>`}
      ${this.list(say.now, '', loose.filter(({ at_ride_height }) => !at_ride_height), false)}
      ${this.list(say.atHeight, say.heightLead, loose.filter(({ at_ride_height }) => at_ride_height), false)}
      <asf-gates .lowering=${lowering} .road=${road}></asf-gates>
      ${unchecked.length ? this.list(say.checks, say.checksLead, unchecked, true) : nothing}`;
  }

  private list(label: string, lead: string, joints: readonly LooseJoint[], checks: boolean): TemplateResult | typeof nothing {
    if (joints.length === 0) return nothing;
    return html`<asf-section .label=${label} .count=${words().refit.loose.all(joints.length)}>${lead ? html`<p class="second">${lead}</p>` : nothing}<ul>${joints.map((joint) => html`<li class="rf-joint-row">${this.row(joint, checks)}</li>`)}</ul></asf-section>`;
  }

  private row(one: LooseJoint, checks: boolean): TemplateResult {
    const say = words().refit.loose;
    const { name, part, tag, part_name, assembly, assembly_name, hardware, finger_tight } = one;
    const joint = say.joint(name);
    const figures = [hardware.record, ...hardware.pieces.map(({ record }) => record)].map((record) => [record.id === hardware.record.id ? '' : record.values.name ?? '', figureInLine(record)] as const).filter(([, figure]) => figure);
    const of = part ? `${tag === undefined ? '' : `${tagFigures(tag)} `}${part_name}`.trim() : '';
    const state = checks ? '' : finger_tight ? say.byHand : say.unsaid;
    const message = checks ? say.checkedDone(joint) : say.tightened(joint);
    const changes: Change[] = checks ? [{ checked_again: true }] : [{ tightened: 'tight' }];
    return html`<a class="rf-joint-link" href=${part ? `#/refit/${assembly ?? 'none'}?step=${part}` : openedFrom(`#/joint/${one.joint}`, 'refit/loose')}><span class="row-name">${joint} · ${of || say.noPart}</span>
        <span class="row-second">${[assembly_name, state].filter(Boolean).join(' · ')}</span>
        ${figures.map(([piece, figure]) => html`<span class="rf-joint-figure"><b>${figure}</b>${piece ? ` ${piece}` : ''}</span>`)}</a>
      <asf-button icon="check" word=${checks ? say.checked : say.tight} label=${checks ? say.checkedOf(joint, of) : say.tightOf(joint, of)} @click=${() => { void write(hardware.record, changes, message); }}></asf-button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-refit-loose': RefitLoose } }
