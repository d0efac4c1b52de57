import type { Group, PartsQuery, Route, Standing } from '../../bridge/protocol';

/** How the list was left: what was sought, how it was put together, where it stood. It comes back after the app was closed. */
export interface ListState {
  find: string;
  group: Group;
  assembly?: string;
  place?: string;
  standing?: Standing;
  route?: Route;
  struck: boolean;
  /** The first row in sight, and the part looked at last. */
  at: number;
  part?: string;
}

const KEY = 'asfound.parts-list';
const start = (): ListState => ({ find: '', group: 'assembly', struck: false, at: 0 });
let state: ListState | undefined;

export function listState(): ListState {
  state ??= read();
  return state;
}

export function keepListState(next: Partial<{ [K in keyof ListState]: ListState[K] | undefined }>): ListState {
  const merged = { ...listState(), ...next };
  state = Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined)) as unknown as ListState;
  try {
    localStorage.setItem(KEY, JSON.stringify(state));
  } catch {
    // Full or refused: it is remembered for as long as the window is open.
  }
  return state;
}

export function queryOf({ find, group, assembly, place, standing, route, struck }: ListState): PartsQuery {
  return { find, group: find && group === 'none' ? 'none' : group, struck, from: 0, ...(assembly && { assembly }), ...(place && { place }), ...(standing && { standing }), ...(route && { route }) };
}

function read(): ListState {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return kept && typeof kept === 'object' ? { ...start(), ...kept } : start();
  } catch {
    return start();
  }
}
