import type { Change, FieldName } from '../../bridge/protocol';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { bytes, hours, length, moment, money, number } from '../words/format';

export interface Said { label: string; value: string }

/** A change in words: which field, and the value it got. Records that are pointed at are named by the caller. */
export function changeSaid(change: Change): Said {
  const say = words();
  const [member, value] = Object.entries(change)[0] as [FieldName | 'clear', unknown];
  if (member === 'clear') return { label: say.history.field[value as FieldName], value: say.history.emptied };
  return { label: say.history.field[member], value: special(change) ?? plain(value) };
}

function special(change: Change): string | undefined {
  const say = words();
  if ('route' in change) return routeWord(change.route);
  if ('hour_value' in change) return money(change.hour_value);
  if ('hour_value_then' in change) return money(change.hour_value_then);
  if ('cash' in change) return money(change.cash);
  if ('own_time' in change) return hours(change.own_time);
  if ('strip_again' in change) return hours(change.strip_again);
  if ('chance' in change) return say.history.ofHundred(number(change.chance / 100, 1));
  if ('side' in change) return say.sides[change.side];
  if ('driver_side' in change) return say.settings.driverOptions[change.driver_side];
  if ('triage' in change) return say.history.triage[change.triage];
  if ('moment' in change) return say.moments.word[change.moment];
  if ('shot' in change) return say.photo.shots[change.shot];
  if ('aim' in change) return say.settings.aims[change.aim];
  if ('place_kind' in change) return say.stores.kinds[change.place_kind];
  if ('kind' in change) return say.problems.thing[change.kind];
  return specialFigure(change);
}

function specialFigure(change: Change): string | undefined {
  const say = words();
  if ('tag' in change) return String(change.tag).padStart(4, '0');
  if ('taken' in change) return moment(new Date(change.taken));
  if ('handed_out' in change) return moment(new Date(change.handed_out));
  if ('held' in change) return say.history.heldOf(change.held.length);
  if ('length' in change) return bytes(change.length);
  if ('lasts' in change) return length(change.lasts / 1000);
  if ('thickness' in change) return `${number(change.thickness / 1000, 3)}\u00a0mm`;
  if ('mass' in change) return `${number(change.mass / 1000, 3)}\u00a0kg`;
  if ('year' in change) return String(change.year);
  if ('cash_certainty' in change) return say.history.certainty[change.cash_certainty];
  if ('own_time_certainty' in change) return say.history.certainty[change.own_time_certainty];
  if ('chance_certainty' in change) return say.history.certainty[change.chance_certainty];
  return undefined;
}

const RECORD = /^[0-9a-f]{32}$/;
const HASH = /^[0-9a-f]{64}$/;

function plain(value: unknown): string {
  const say = words().history;
  if (typeof value === 'boolean') return value ? say.yes : say.no;
  if (typeof value === 'number') return number(value, 3);
  const text = String(value);
  // Numbers of records and pictures say nothing to a person.
  if (RECORD.test(text)) return say.other;
  return HASH.test(text) ? text.slice(0, 8) : text;
}
