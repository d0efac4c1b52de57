import type { PlaceKind } from '../../bridge/protocol';
import type { Option } from '../kit/choice';
import { words } from '../words';

const KINDS: readonly PlaceKind[] = ['box', 'shelf', 'rack', 'bag', 'area', 'hook', 'floor'];

/** The kinds of places, the one met most first. */
export function placeKinds(): Option<PlaceKind>[] {
  return KINDS.map((value) => ({ value, word: words().stores.kinds[value] }));
}
