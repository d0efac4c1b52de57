import type { PartLine, Route } from '../../bridge/protocol';

const NEW: ReadonlySet<Route> = new Set(['buy', 'kit', 'exchange', 'donor']);

/** By the route chosen another piece goes on in the place of this one. */
export function bringsNew({ route }: Pick<PartLine, 'route'>): boolean {
  return route !== undefined && NEW.has(route);
}
