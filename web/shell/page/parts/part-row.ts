import { html, nothing, type TemplateResult } from 'lit';
import type { PartLine } from '../../bridge/protocol';
import '../kit/row';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { aroundFound, foundLetters, foundWithin } from './found-letters';
import { standingWord, tagFigures, tagMarks } from './tag-figures';

export interface RowLook {
  picture: string;
  href?: string;
  selecting?: boolean;
  chosen?: boolean;
  current?: boolean;
  compact?: boolean;
  /** Its side is told: where it lies under the head of another one. */
  tellSide?: boolean;
}

/** One part in a list, with the letters found. */
export function partRow(line: PartLine, { picture, href, selecting = false, chosen = false, current = false, compact = false, tellSide = false }: RowLook): TemplateResult {
  const side = tellSide && line.side ? words().sides[line.side] : '';
  const second = secondLine(line);
  return html`<asf-row .number=${tagFigures(line.tag)} .standing=${line.standing} .standingWord=${standingWord(line)} .marks=${tagMarks(line)} .name=${partName(line)} .second=${side ? html`<b>${side}</b> ${second}` : second}
    .photo=${line.photo ? picture : ''} .href=${href} ?selecting=${selecting} ?chosen=${chosen} ?current=${current} ?compact=${compact}></asf-row>`;
}

/** Its name, with the pieces when there are several. */
export function partName(line: PartLine): TemplateResult | string {
  const name = line.name ? foundLetters(line.name, foundWithin(line, 'name')) : words().parts.noName;
  return line.quantity > 1 ? html`${name}, ${line.quantity}` : name;
}

/** Where what was sought was found, else where it lies and what becomes of it. */
export function secondLine(line: PartLine): TemplateResult | string {
  const say = words().parts;
  const [note] = foundWithin(line, 'note');
  const [number] = foundWithin(line, 'number');
  const inName = line.found.some(({ within }) => within === 'name' || within === 'tag');
  if (!inName && number) return html`${say.numberPrefix}${foundLetters(number.text, [number])}`;
  if (!inName && note) {
    const near = aroundFound(note);
    return html`${say.notePrefix}“${foundLetters(near.text, [near])}”`;
  }
  return standsAt(line);
}

function standsAt(line: PartLine): TemplateResult | string {
  const found = foundWithin(line, 'place');
  const place = line.place.at(-1);
  const where = place ? foundLetters(place, found) : '';
  const flags = line.stuck ? words().sheet.marks.stuck : '';
  const route = line.route ? routeWord(line.route) : '';
  const pieces = [flags, where, route].filter((one) => one !== '');
  return html`${pieces.map((piece, i) => html`${i > 0 ? ' · ' : nothing}${piece}`)}`;
}
