import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { Change, Gate, RecordView } from '../../bridge/protocol';
import { tellDone, tellRefused } from '../carry-out';
import '../kit/button';
import '../kit/dialog';
import '../kit/message';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { seenOf } from '../sheet/write';
import { today } from '../today';
import { words } from '../words';
import { leftBeforeRoad } from './before-road';

type Which = 'lowered' | 'on_the_road';

/** Lowering, and the road: said by whoever stands beside the vehicle, refused while something is loose that is in the way. */
@customElement('asf-gates')
export class Gates extends LightElement {
  @property({ attribute: false }) lowering!: Gate;
  @property({ attribute: false }) road!: Gate;
  /** How many joints stood in the way when it was last said. */
  @state() private refused = 0;
  /** It is said to be on the road with something left to do: asked about first. */
  @state() private asking = false;
  private readonly whole = new Live(this, 'commissioning', () => ({ ask: 'commissioning' }));
  private readonly joints = new Live(this, 'ready', () => ({ ask: 'ready', today: today() }));

  override willUpdate(): void {
    if (this.lowering.open && this.road.open) this.refused = 0;
  }

  override render(): TemplateResult {
    const say = words().refit.gates;
    const { vehicle } = this;
    return html`<asf-section .label=${say.title}>
      ${this.refused > 0 ? html`<asf-message kind="alert" .happened=${say.held.happened(this.refused)} .safe=${say.held.safe} .todo=${say.held.todo}></asf-message>` : nothing}
      ${this.whole.view && !vehicle ? html`<p class="reckoned">${say.noVehicle}</p><asf-button icon="vehicle" word=${say.toVehicle} href="#/vehicles"></asf-button>` : nothing}
      ${vehicle && this.joints.view ? html`<div class="rf-gates">${this.gate('lowered', this.lowering, vehicle)}${this.gate('on_the_road', this.road, vehicle)}</div>` : nothing}</asf-section>
      ${vehicle ? this.anyway(vehicle) : nothing}`;
  }

  private get vehicle(): RecordView | undefined {
    return this.whole.view?.vehicle;
  }

  /** What the record knows to be left before the road. */
  private get left(): string[] {
    const { view } = this.whole;
    return view ? leftBeforeRoad(view, this.joints.view?.unchecked.length ?? 0, this.lowering.done) : [];
  }

  private anyway(vehicle: RecordView): TemplateResult {
    const say = words().refit.gates.anyway;
    const close = (): void => { this.asking = false; };
    return html`<asf-dialog .open=${this.asking} .label=${say.title} .body=${html`<p class="reckoned">${say.lead}</p><ul>${this.left.map((line) => html`<li>${line}</li>`)}</ul>`}
      .actions=${html`<asf-button word=${say.leave} @click=${close}></asf-button><asf-button icon="vehicle" word=${say.go} @click=${() => { close(); void this.say('on_the_road', true, vehicle); }}></asf-button>`} @asf-close=${close}></asf-dialog>`;
  }

  private gate(which: Which, gate: Gate, vehicle: RecordView): TemplateResult {
    const say = words().refit.gates;
    const isLower = which === 'lowered';
    const [word, done, back] = isLower ? [say.lower, say.lowered, say.raise] : [say.road, say.onTheRoad, say.offRoad];
    const held = gate.joints.length ? (isLower ? say.lowerHeld : say.roadHeld)(gate.joints.length) : say.free;
    return html`<div class="rf-gate"><p class="rf-gate-words"><asf-icon name=${gate.open ? (gate.done ? 'proved' : 'check') : 'proved-bad'}></asf-icon><span>${gate.done ? html`<b>${done}</b> ` : nothing}<span class="reckoned">${held}</span></span></p>
      ${gate.done ? html`<asf-button compact plain word=${back} @click=${() => { void this.say(which, false, vehicle); }}></asf-button>` : html`<asf-button icon=${isLower ? 'bring' : 'vehicle'} word=${word} @click=${() => { this.wants(which, gate, vehicle); }}></asf-button>`}</div>`;
  }

  private wants(which: Which, gate: Gate, vehicle: RecordView): void {
    if (which === 'on_the_road' && gate.open && this.left.length > 0) this.asking = true;
    else void this.say(which, true, vehicle);
  }

  // What is refused is told here, beside the list that has to be worked through, not above the page.
  private async say(which: Which, is: boolean, vehicle: RecordView): Promise<void> {
    const say = words().refit.gates;
    this.refused = 0;
    const gate = which === 'lowered' ? this.lowering : this.road;
    const changes: Change[] = [which === 'lowered' ? { lowered: is } : { on_the_road: is }];
    const message = which === 'lowered' ? (is ? say.lowerDone : say.raised) : is ? say.roadDone : say.offRoadDone;
    const { ok, problems, entry } = await desk.command({ do: 'change', ids: [vehicle.id], changes, seen: seenOf(vehicle, changes) });
    if (ok) tellDone(message, entry);
    else if (problems.some(({ code }) => code === 'still-loose')) this.refused = Math.max(1, gate.joints.length);
    // Trouble with storing the desk tells by itself.
    else tellRefused(problems);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-gates': Gates } }
