import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Change, Paint, RefitStepsView, StepJoint, Units } from '../../bridge/protocol';
import '../assemblies/reference';
import { openedFrom } from '../back-of';
import '../cautions/cautions';
import '../kit/button';
import '../kit/choice';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import { words } from '../words';
import { hours, number } from '../words/format';
import { readHours } from '../words/read';
import './consumables';
import './goes-after';
import { figuresOf, pieceRow } from './hardware';
import { lackLines } from './lacks';
import { addressOf } from './assembly-row';
import './wall-sheet';

/** What is to be said of a whole assembly: what stands in the way, what it uses up, what it goes on after, paint, time, reference, its sheet. */
@customElement('asf-assembly-about')
export class AssemblyAbout extends LightElement {
  @property({ attribute: false }) view!: RefitStepsView;
  @property() units: Units = 'metric';

  override render(): TemplateResult {
    const say = words().refit;
    const { assembly, record, joints, consumables, rules, circles, steps, loose } = this.view;
    return html`<asf-cautions step="refit" .assembly=${assembly.id}></asf-cautions>
      ${assembly.lacks.length ? html`<asf-section .label=${say.blocks} .count=${number(assembly.lacks.length)}>${lackLines(assembly.lacks, 12, (lack) => (lack.part ? addressOf(lack, assembly) : undefined))}</asf-section>` : nothing}
      <a class="rf-loose" href="#/refit/loose"><asf-icon name="loose"></asf-icon><span><b>${loose.length ? say.loose.inAssembly(loose.length) : say.loose.noneInAssembly}</b> ${say.loose.here}</span><asf-icon name="next" size="20"></asf-icon></a>
      ${joints.length ? html`<asf-section .label=${say.assembly.freeJoints}>${joints.map((joint) => html`<div class="rf-joint"><h3 class="rf-joint-name"><a href=${openedFrom(`#/joint/${joint.record.id}`, `refit/${assembly.id}`)}>${say.onStep.joint(joint.record.values.name ?? '', joint.record.values.bag ?? '')}</a></h3>${pieceRow(joint, this.units === 'inch')}${figuresOf(joint, true)}${this.tight(joint)}</div>`)}</asf-section>` : nothing}
      <asf-consumables .of=${assembly.id} .list=${consumables}></asf-consumables>
      <asf-goes-after .assembly=${assembly.id} .name=${assembly.name} .steps=${steps} .rules=${rules} .circles=${circles}></asf-goes-after>
      <asf-section .label=${say.assembly.about}>
        <asf-choice compact columns="3" .label=${say.assembly.paint} .options=${(['before', 'after', ''] as const).map((value) => ({ value, word: say.assembly.paints[value] }))} .value=${live(record.values.paint ?? '')} @asf-change=${this.paint}></asf-choice>
        <p class="second">${say.assembly.paintHint}</p>
        <asf-edit-line kind="hours" .label=${say.assembly.time} .hint=${say.assembly.timeHint} .value=${record.values.fit_time === undefined ? '' : hours(record.values.fit_time)} .record=${record} key="assembly/${record.id}/fit_time" .save=${this.time}></asf-edit-line>
        ${this.reference()}
        <div class="pair"><asf-button icon="history" word=${say.assembly.toBefore} href=${`#/before/${assembly.id}`}></asf-button><asf-button icon="list" word=${words().commissioning.fluids.title} href=${openedFrom('#/refit/fluids', `refit/${assembly.id}`)}></asf-button></div></asf-section>
      <asf-wall-sheet .assembly=${assembly.id} .name=${assembly.name}></asf-wall-sheet>`;
  }

  /** No step ticks it: it is said here. */
  private tight({ record }: StepJoint): TemplateResult {
    const say = words().refit.loose;
    const name = say.joint(record.values.name ?? '');
    const is = record.values.tightened === 'tight';
    return html`<div class="rf-tight-ways"><span class="rf-stand"><asf-icon name=${is ? 'proved' : 'not-proved'} size="20"></asf-icon>${words().tightening.states[record.values.tightened ?? '']}</span>
      ${is ? nothing : html`<asf-button compact icon="check" word=${say.tight} label=${say.tightOf(name, '')} @click=${() => { void write(record, [{ tightened: 'tight' }], say.tightened(name)); }}></asf-button>`}</div>`;
  }

  private reference(): TemplateResult {
    const say = words().refit;
    const { assembly, record } = this.view;
    const { reference } = assembly;
    return html`${reference && !reference.is_kept && reference.mirror_name ? html`<p class="reckoned">${say.hasReference(reference.mirror_name)}</p>` : nothing}
      <asf-reference .record=${record}></asf-reference>`;
  }

  private readonly paint = async (event: CustomEvent<{ value: Paint | '' }>): Promise<void> => {
    const say = words().refit.assembly;
    const { value } = event.detail;
    // What was not stored is not shown as chosen.
    if (!await write(this.view.record, [value ? { paint: value } : { clear: 'paint' }], say.paintSaid(say.paints[value]))) this.requestUpdate();
  };

  private readonly time = (text: string): Promise<string | null> => {
    const say = words().refit.assembly;
    const minutes = readHours(text);
    if (text.trim() && !minutes) return Promise.resolve(say.wrongTime);
    const change: Change = minutes === null ? { clear: 'fit_time' } : { fit_time: minutes };
    return putDown(this.view.record, change, minutes === null ? say.timeCleared : say.timeSaid);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-assembly-about': AssemblyAbout } }
