import { html, nothing, type TemplateResult } from 'lit';
import type { Hazard, RecordView } from '../../bridge/protocol';
import { words } from '../words';
import { dayOfYear } from '../words/format';

/** A hazard, opened: what can happen, what to do, who decides, where that stands, who has read it. */
export function hazardBody(hazard: Hazard, acknowledged: RecordView | undefined): TemplateResult {
  const say = words().cautions;
  const { can, todo, who, source } = say.hazard[hazard];
  const part = (label: string, text: string): TemplateResult => html`<div><dt>${label}</dt><dd class="reckoned">${text}</dd></div>`;
  const { taken, who: reader = '' } = acknowledged?.values ?? {};
  return html`<dl class="caution-parts">${part(say.can, can)}${part(say.todo, todo)}${part(say.who, who)}<div><dt>${say.source}</dt><dd class="second">${source}</dd></div></dl>
    <p class="second">${say.standing}</p>
    ${acknowledged ? html`<p class="second">${say.readBy(reader, taken === undefined ? '' : dayOfYear(new Date(taken)))}</p>` : nothing}`;
}
