import type { LitElement } from 'lit';
import type { Place } from './words/places';

/** An address within the app: `#/part/ID?find=hub`. */
export interface Address {
  place: string;
  id: string | null;
  search: URLSearchParams;
}

/** What every place is: an element that is told its address. */
export interface PlaceElement extends LitElement {
  address: Address;
}

/** How a place is reached. */
export interface PlaceEntry {
  /** Defines `asf-place-NAME`. */
  load: () => Promise<unknown>;
  /** Which of the five cells of the index is current there. */
  under: Place | '';
  /** It works without an open job. */
  withoutJob?: boolean;
}

/** All places by the first word of their address. */
export const places: Record<string, PlaceEntry> = {
  first: { load: () => import('./first/place'), under: '', withoutJob: true },
  job: { load: () => import('./job/place'), under: '' },
  teardown: { load: () => import('./teardown/place'), under: 'teardown' },
  assemblies: { load: () => import('./assemblies/place'), under: 'teardown' },
  before: { load: () => import('./before/place'), under: 'teardown' },
  joint: { load: () => import('./joints/place'), under: 'teardown' },
  parts: { load: () => import('./parts/place'), under: 'parts' },
  part: { load: () => import('./sheet/place'), under: 'parts' },
  photo: { load: () => import('./photo/place'), under: 'parts' },
  routes: { load: () => import('./routes/place'), under: 'parts' },
  decide: { load: () => import('./decide/place'), under: 'parts' },
  judge: { load: () => import('./judge/place'), under: 'parts' },
  stores: { load: () => import('./stores/place'), under: 'stores' },
  scan: { load: () => import('./scan/place'), under: 'stores' },
  where: { load: () => import('./where/place'), under: 'stores' },
  missing: { load: () => import('./missing/place'), under: 'stores' },
  plan: { load: () => import('./plan/place'), under: 'plan' },
  bought: { load: () => import('./bought/place'), under: 'plan' },
  paste: { load: () => import('./paste/place'), under: 'parts' },
  refit: { load: () => import('./refit/place'), under: 'refit' },
  vehicles: { load: () => import('./vehicles/place'), under: '' },
  suppliers: { load: () => import('./suppliers/place'), under: '' },
  gearing: { load: () => import('./gearing/place'), under: 'plan' },
  rules: { load: () => import('./rules/place'), under: '' },
  cautions: { load: () => import('./cautions/place'), under: '' },
  settings: { load: () => import('./settings/place'), under: '' },
  problems: { load: () => import('./problems/place'), under: '' },
  history: { load: () => import('./history/place'), under: '' },
  'hand-over': { load: () => import('./hand-over/place'), under: '', withoutJob: true },
  'safe-keeping': { load: () => import('./safe-keeping/place'), under: '' },
  'self-test': { load: () => import('./self-test/place'), under: '', withoutJob: true },
  'tags-sheet': { load: () => import('./tags-sheet/place'), under: 'teardown' },
};

/** Reads an address; the empty one is the first screen. */
export function addressOf(hash: string): Address {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?');
  const [place = '', id = ''] = path.split('/');
  return { place: place || 'first', id: id ? decoded(id) : null, search: new URLSearchParams(query) };
}

// An address cut short in the middle of a letter is taken as it stands.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
