/** A tag number as it stands on the tag: four figures at least. */
export function tagNumber(tag: number | null | undefined): string {
  return tag === null || tag === undefined ? '' : String(tag).padStart(4, '0');
}
