import type { PartLine } from '../../bridge/protocol';
import type { TagMarks } from '../kit/standing';
import { words } from '../words';

/** A tag number as it stands on the tag: at least four figures. */
export function tagFigures(tag: number | undefined): string {
  return tag === undefined ? '····' : String(tag).padStart(4, '0');
}

/** The word for how it stands: what is lent out is out of the house, but for no work. */
export function standingWord({ standing, lent }: Pick<PartLine, 'standing' | 'lent'>): string {
  return lent ? words().where.house.onLoan : words().standings[standing];
}

/** What lies over the standing of a part. */
export function tagMarks({ irreplaceable, missing, struck }: PartLine): TagMarks {
  return { irreplaceable, missing, struck };
}
