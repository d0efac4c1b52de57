import { html, nothing, type TemplateResult } from 'lit';
import type { Group, PartsGroup } from '../../bridge/protocol';
import { routeWord } from '../routes/route-word';
import { words } from '../words';

/** What a group is called. */
export function groupTitle({ title, route, standing }: PartsGroup, by: Group): string {
  const say = words().parts;
  if (route) return routeWord(route);
  if (standing) return words().standings[standing];
  if (title) return title;
  return { assembly: say.noAssembly, place: say.noPlace, route: say.noRoute, standing: say.ungrouped, none: say.ungrouped }[by];
}

export function groupSide({ side }: PartsGroup): TemplateResult | typeof nothing {
  return side ? html`${words().sides[side]}` : nothing;
}
