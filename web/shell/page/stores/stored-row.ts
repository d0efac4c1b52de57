import { html, type TemplateResult } from 'lit';
import type { Care, StoredLine } from '../../bridge/protocol';
import '../kit/row';
import { partName } from '../parts/part-row';
import { standingWord, tagFigures, tagMarks } from '../parts/tag-figures';
import { words } from '../words';
import { bringsNew } from './brings-new';
import { when } from './when';


/** A part in stores as a row; `second` says what there is to say of it there. */
export function storedRow(stored: StoredLine, picture: string, second: unknown, href = `#/part/${stored.line.id}`): TemplateResult {
  const { line } = stored;
  const marks = { ...tagMarks(line), missing: isMissing(stored), foreign: stored.counted === 'foreign' && !stored.settled };
  return html`<asf-row .number=${tagFigures(line.tag)} .standing=${line.standing} .standingWord=${standingWord(line)} .marks=${marks} .name=${partName(line)} .second=${second} .photo=${line.photo ? picture : ''} href=${href}></asf-row>`;
}

/** It should lie somewhere, and was not found there. */
export function isMissing(stored: Pick<StoredLine, 'counted' | 'settled' | 'missed'>): boolean {
  return (stored.counted === 'missing' && !stored.settled) || stored.missed !== undefined;
}

/** What a place says of a part in it: missing, foreign, or here, and how it is kept. */
export function inPlace(stored: StoredLine): TemplateResult | string {
  const say = words().stores;
  if (isMissing(stored)) {
    const { seen } = stored;
    return seen?.elsewhere ? html`<b>${say.countedWord.missing}, ${say.elsewhere(seen.path.at(-1) ?? '', when(seen.at))}</b>` : html`<b>${say.missingSeen(seen ? when(seen.at) : '')}</b>`;
  }
  if (stored.counted === 'foreign' && !stored.settled) return html`<b>${belongs(stored)}</b>`;
  return [stored.counted === 'with-bag' ? say.countedWord['with-bag'] : say.hereWords, ...pattern(stored), ...careWords(stored.care), ...stored.awkward.map((one) => say.suits[one])].join(', ');
}

/** Another goes on in its place: the old one is kept to compare with, and lies here until it is taken out. */
function pattern({ line }: StoredLine): string[] {
  if (!bringsNew(line)) return [];
  return [line.standing === 'refitted' ? words().stores.oldOne : words().stores.pattern];
}

/** Where a foreign part belongs by the record. */
export function belongs({ line, lies }: StoredLine): string {
  const say = words().stores;
  const place = lies === 'place' ? line.place.at(-1) : undefined;
  return place ? say.belongs(place) : say.foreignLies(say.lies[lies]);
}

export function careWords({ oiled, wrapped, fragile, lift }: Care): string[] {
  const say = words().stores;
  const kept = oiled && wrapped ? [say.oiledAndWrapped] : [oiled && say.care.oiled, wrapped && say.care.wrapped];
  return [...kept, fragile && say.care.fragile, lift && lift !== 'alone' && say.care[lift]].filter((word) => typeof word === 'string');
}

