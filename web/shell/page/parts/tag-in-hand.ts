import { html, nothing, type TemplateResult } from 'lit';
import type { PartLine } from '../../bridge/protocol';
import '../kit/tag';
import { words } from '../words';
import { tagFigures } from './tag-figures';

/** The tag of the part that a place is about, as it stands in the head. */
export function tagInHand(line: PartLine, size = 52): TemplateResult {
  return html`<asf-tag .number=${tagFigures(line.tag)} .standing=${line.standing} .size=${size} in-hand ?irreplaceable=${line.irreplaceable} ?missing=${line.missing} ?struck=${line.struck}></asf-tag>`;
}

/** LEFT or RIGHT before what else is said of it; nothing where a part has no side. */
export function sideBefore({ side }: PartLine): TemplateResult | typeof nothing {
  return side ? html`<b>${words().sides[side]}</b> · ` : nothing;
}
