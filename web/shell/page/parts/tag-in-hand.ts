import { html, nothing, type TemplateResult } from 'lit';
import { desk } from '../../bridge/desk';
import type { PartLine } from '../../bridge/protocol';
import * as journal from '../journal';
import '../kit/tag';
import { words } from '../words';
import { standingWord, tagFigures } from './tag-figures';

/** The tag of the part that a place is about, as it stands in the head. */
export function tagInHand(line: PartLine, size = 52): TemplateResult {
  return html`<asf-tag .number=${tagFigures(line.tag)} .standing=${line.standing} .standingWord=${standingWord(line)} .size=${size} about ?in-hand=${isInHand(line.id)} ?irreplaceable=${line.irreplaceable} ?missing=${line.missing} ?struck=${line.struck}></asf-tag>`;
}

/** On the bench, by what Teardown has open. */
function isInHand(part: string): boolean {
  return journal.inHand(desk.current() ?? '').part === part;
}

/** LEFT or RIGHT before what else is said of it; nothing where a part has no side. */
export function sideBefore({ side }: PartLine): TemplateResult | typeof nothing {
  return side ? html`<b>${words().sides[side]}</b> · ` : nothing;
}
