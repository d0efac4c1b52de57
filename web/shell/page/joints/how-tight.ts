import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { JointView, RecordView } from '../../bridge/protocol';
import '../kit/button';
import '../kit/dialog';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { figure, hasFigure } from '../refit/hardware';
import '../refit/tightening-form';
import { noteOpen, openBefore } from '../reopening';
import '../styles/refit.css';
import { words } from '../words';
import { capital } from '../words/format';

/** How tight a joint and its pieces go together again: put down while the manual lies open, wanted months later. */
@customElement('asf-how-tight')
export class HowTight extends LightElement {
  @property({ attribute: false }) joint!: JointView;
  @property({ type: Boolean }) inch = false;
  /** The joint or piece whose form stands open. */
  @state() private open = '';
  private shown = '';

  override willUpdate(): void {
    const { id } = this.joint.record;
    if (id === this.shown) return;
    this.shown = id;
    this.open = openBefore(`joint/${id}`);
  }

  override render(): TemplateResult {
    const say = words().tightening;
    const { record } = this.joint;
    const pieces = this.joint.pieces.filter(({ struck }) => !struck);
    const all = [record, ...pieces];
    const open = all.find(({ id }) => id === this.open);
    const figures = all.filter((one) => hasFigure(one) || (one === record && Boolean(one.values.remark)));
    return html`<asf-section .label=${say.title}>
      ${figures.map((one) => figure(one, this.called(one), one === record && record.values.at_ride_height === true))}
      <div class="rf-tight-ways">${all.map((one) => html`<asf-button compact word=${this.called(one)} label=${say.of(this.called(one))} @click=${() => { this.hold(one.id); }}></asf-button>`)}</div>
      <asf-dialog .open=${open !== undefined} .label=${open ? say.of(this.called(open)) : ''} .body=${open ? html`<asf-tightening-form .record=${open} .units=${this.inch ? 'inch' : 'metric'} @asf-put=${() => { this.hold(''); }}></asf-tightening-form>` : nothing} @asf-close=${() => { this.hold(''); }}></asf-dialog></asf-section>`;
  }

  private called(record: RecordView): string {
    const { record: joint, pieces } = this.joint;
    if (record === joint) return words().tightening.whole;
    const at = pieces.filter(({ struck }) => !struck).indexOf(record) + 1;
    return capital(record.values.name ?? words().joints.piece(at));
  }

  private hold(open: string): void {
    this.open = open;
    noteOpen(`joint/${this.shown}`, open);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-how-tight': HowTight } }
