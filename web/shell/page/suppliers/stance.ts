import { html, type TemplateResult } from 'lit';
import type { RecordView, Stance } from '../../bridge/protocol';
import '../kit/choice';
import { write } from '../sheet/write';
import { words } from '../words';

/** Whether a plan must take it, must leave it, or is free to. */
export function stanceChoice(record: RecordView): TemplateResult {
  const say = words().stance;
  const options = (['', 'pinned', 'forbidden'] as const).map((value) => ({ value, word: say.options[value] }));
  return html`<asf-choice compact columns="3" .label=${say.label} .options=${options} .value=${record.values.stance ?? ''}
    @asf-change=${({ detail: { value: stance } }: CustomEvent<{ value: Stance | '' }>) => { void write(record, [stance ? { stance } : { clear: 'stance' }], say.saved(say.options[stance])); }}></asf-choice>`;
}
