import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { RecordView } from '../../bridge/protocol';
import '../kit/choice';
import { LightElement } from '../kit/light-element';
import { write } from '../sheet/write';
import '../styles/assemblies.css';
import { words } from '../words';

/** Whether an assembly is kept whole as the reference: said before it comes apart, and where it is put together again. */
@customElement('asf-reference')
export class Reference extends LightElement {
  @property({ attribute: false }) record!: RecordView;

  override render(): TemplateResult {
    const say = words().refit.assembly;
    return html`<asf-choice columns="2" .label=${say.reference} .options=${[{ value: 'yes', word: say.keeps }, { value: '', word: say.strips }]} .value=${live(this.record.values.reference === true ? 'yes' : '')} @asf-change=${this.said}></asf-choice>
      <p class="second">${say.referenceHint}</p>`;
  }

  private readonly said = async (event: CustomEvent<{ value: string }>): Promise<void> => {
    const say = words().refit.assembly;
    const reference = event.detail.value === 'yes';
    // What was not stored is not shown as chosen.
    if (!await write(this.record, [{ reference }], reference ? say.kept : say.notKept)) this.requestUpdate();
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-reference': Reference } }
