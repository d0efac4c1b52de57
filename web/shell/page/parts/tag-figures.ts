import type { PartLine } from '../../bridge/protocol';
import type { TagMarks } from '../kit/standing';

/** A tag number as it stands on the tag: at least four figures. */
export function tagFigures(tag: number | undefined): string {
  return tag === undefined ? '····' : String(tag).padStart(4, '0');
}

/** What lies over the standing of a part. */
export function tagMarks({ irreplaceable, missing, struck }: PartLine): TagMarks {
  return { irreplaceable, missing, struck };
}
