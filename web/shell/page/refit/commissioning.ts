import { html, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { BeforeLine, Change, CommissioningLine, CommissioningView, RecordView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/head';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Once } from '../once';
import '../sheet/edit-line';
import { putDown, write } from '../sheet/write';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { day } from '../words/format';
import './fluids';
import './gates';
import './left-over';

/** The last assembly is the vehicle itself: fluids, steps with what was found, findings from before beside now, what is left over, the road. */
@customElement('asf-commissioning')
export class CommissioningPage extends LightElement {
  private readonly live = new Live(this, 'commissioning', () => ({ ask: 'commissioning' }));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);
  private readonly once = new Once();

  override render(): TemplateResult {
    const say = words().commissioning;
    const { view } = this.live;
    return html`<asf-head .name=${say.title} .second=${say.second} back="#/refit" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body rf-commissioning">${view ? this.all(view) : nothing}</div>`;
  }

  private all(view: CommissioningView): TemplateResult {
    const say = words().commissioning;
    const refit = words().refit;
    const done = view.steps.filter(({ record }) => record && !record.values.skipped).length;
    const compared = view.before.filter(({ record }) => record.values.found_after === undefined).length;
    return html`<p class="reckoned">${say.lead} ${view.open ? say.open(view.open) : say.allOn}</p>
      <asf-fluids .fluids=${view.fluids} .vehicle=${view.vehicle} .units=${this.head.view?.settings.units ?? 'metric'}></asf-fluids>
      <asf-section .label=${say.stepsTitle} .count=${say.progress(done, view.steps.length)}><ol class="rf-commission">${view.steps.map((line) => html`<li>${this.step(line, view.vehicle)}</li>`)}</ol></asf-section>
      <asf-section .label=${say.before.title} .count=${view.before.length ? (compared ? say.before.open(compared) : say.before.all) : ''}>
        <p class="second">${view.before.length ? say.before.lead : say.before.none}</p><ul>${view.before.map((line) => html`<li class="rf-found">${this.found(line)}</li>`)}</ul></asf-section>
      <a class="rf-loose" href="#/refit/loose"><asf-icon name="loose"></asf-icon><span><b>${refit.loose.title}: ${view.loose.length ? refit.loose.count(view.loose.length) : refit.loose.none}</b></span><asf-icon name="next" size="20"></asf-icon></a>
      <asf-left-over .left=${view.left}></asf-left-over>
      <asf-gates .lowering=${view.lowering} .road=${view.road}></asf-gates>`;
  }

  private step({ step, record }: CommissioningLine, vehicle: RecordView | undefined): TemplateResult {
    const say = words().commissioning;
    const [name, what] = say.steps[step];
    const skipped = record?.values.skipped === true;
    const isDone = record !== undefined && !skipped;
    const taken = record?.values.taken;
    const state = isDone ? say.isDone : skipped ? say.isSkipped : say.isOpen;
    const make = (changes: Change[], message: string): void => {
      void this.once.run(step, this.live.view, async () => {
        const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'commissioning', changes: [{ commissioning_step: step }, ...(vehicle ? [{ of: vehicle.id }] : []), { taken: Date.now() }, ...changes] }, message);
        return ok;
      });
    };
    return html`<div class="rf-commission-step" data-step=${step} role="group" aria-labelledby="commission-${step}"><div class="rf-commission-words"><asf-icon name=${isDone ? 'proved' : skipped ? 'skip' : 'not-proved'}></asf-icon><div><h3><b id="commission-${step}">${name}</b> <span class="second">${state}${record && taken !== undefined ? `, ${day(new Date(taken))}` : ''}</span></h3><p class="second">${what}</p></div></div>
      ${record ? html`<asf-edit-line kind="area" .label=${say.finding} .value=${record.values.text ?? ''} .record=${record} key="commissioning/${record.id}/text" .save=${(typed: string, seen?: RecordView) => putDown(seen, typed.trim() ? { text: typed.trim() } : { clear: 'text' }, say.findingKept(name))}></asf-edit-line>
        <div class="rf-commission-ways">${skipped ? html`<asf-button compact icon="check" word=${say.done} label=${say.doneOf(name)} @click=${() => { void write(record, [{ skipped: false }, { taken: Date.now() }], say.doneSaid(name)); }}></asf-button>` : nothing}
        <asf-button compact plain icon="undo" word=${say.undo} label=${say.undoOf(name)} @click=${() => { void strikeOut(record, say.openSaid(name)); }}></asf-button></div>`
        : html`<div class="pair"><asf-button icon="check" word=${say.done} label=${say.doneOf(name)} @click=${() => { make([], say.doneSaid(name)); }}></asf-button>
          <asf-button icon="skip" word=${say.skip} label=${say.skipOf(name)} @click=${() => { make([{ skipped: true }], say.skippedSaid(name)); }}></asf-button></div>`}</div>`;
  }

  private found({ assembly, assembly_name, side, record }: BeforeLine): TemplateResult {
    const say = words().commissioning.before;
    const check = record.values.check ? words().before.check[record.values.check] : '';
    return html`<div role="group" aria-labelledby="found-${record.id}"><p id="found-${record.id}"><a href=${`#/before/${assembly}`}><b>${[assembly_name, side ? words().sides[side] : ''].filter(Boolean).join(' ')}</b></a> <span class="second">${check}</span></p>
      <dl class="rf-found-two"><div><dt>${say.was}</dt><dd>${record.values.text}</dd></div></dl>
      <asf-edit-line .label=${say.now} .value=${record.values.found_after ?? ''} .record=${record} key="before/${record.id}/found_after" .save=${(typed: string, seen?: RecordView) => putDown(seen, typed.trim() ? { found_after: typed.trim() } : { clear: 'found_after' }, say.saved(check))}></asf-edit-line></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-commissioning': CommissioningPage } }
