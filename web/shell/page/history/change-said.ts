import type { Certainty, Change, FieldName } from '../../bridge/protocol';
import { checkWords, familyWords, featureWords } from '../judge/said';
import { torqueFigure, torqueSign } from '../refit/torque';
import { volumeWords } from '../refit/volume';
import { dayWords } from '../refit/when';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import type { CheckWords } from '../words/checks';
import { bytes, count, hours, length, moment, money, number } from '../words/format';

export interface Said { label: string; value: string }

/** A change in words: which field, and the value it got. Records that are pointed at are named by the caller. `beside`: what was written to the same record with it. */
export function changeSaid(change: Change, beside: readonly Change[] = []): Said {
  const say = words();
  const [member, value] = Object.entries(change)[0] as [FieldName | 'clear', unknown];
  if (member === 'clear') return { label: say.history.field[value as FieldName], value: told(change, beside) ?? say.history.emptied };
  return { label: say.history.field[member], value: told(change, beside) ?? special(change) ?? plain(value) };
}

/** What is only told in full by what stands beside it. */
function told(change: Change, beside: readonly Change[]): string | undefined {
  if ('outcome' in change) {
    const asked = beside.find((other) => 'question' in other);
    return asked && checkWords(asked).outcomes[change.outcome];
  }
  // A sum without a currency is in the job's own, as the value of an hour is.
  if ('expected_then' in change) {
    const hour = beside.find((other) => 'hour_value_then' in other);
    return hour && money({ minor: change.expected_then, currency: hour.hour_value_then.currency });
  }
  // A figure is in the unit it was read in, which is written with it.
  if ('torque' in change) {
    const unit = beside.find((other) => 'torque_unit' in other)?.torque_unit ?? 'newton-metre';
    return `${torqueFigure(change.torque, unit)}\u00a0${torqueSign(unit)}`;
  }
  return 'clear' in change && change.clear === 'chosen' ? words().history.takenBack : undefined;
}

function special(change: Change): string | undefined {
  const say = words();
  if ('route' in change) return routeWord(change.route);
  if ('quotes' in change) return count(change.quotes.length, 'quote');
  if ('side' in change) return say.sides[change.side];
  if ('driver_side' in change) return say.settings.driverOptions[change.driver_side];
  if ('triage' in change) return say.history.triage[change.triage];
  if ('moment' in change) return say.moments.word[change.moment];
  if ('shot' in change) return say.photo.shots[change.shot];
  if ('aim' in change) return say.settings.aims[change.aim];
  if ('place_kind' in change) return say.stores.kinds[change.place_kind];
  if ('build' in change) return say.where.care.builds[change.build];
  if ('out_for' in change) return say.where.house.fors[change.out_for];
  if ('family' in change) return familyWords(change.family)?.name;
  if ('question' in change) return RECORD.test(change.question) ? say.judge.ownQuestion : checkWords(change).name;
  if ('outcome' in change) return outcomeWord(change.outcome);
  if ('feature' in change) return featureWords(change.feature).name;
  if ('stance' in change) return say.stance.options[change.stance];
  if ('rate_basis' in change) return say.costing.form.perOne[change.rate_basis];
  if ('relation' in change) return say.rules.relations[change.relation];
  if ('hazard' in change) return say.cautions.named(change.hazard);
  if ('kind' in change) return say.problems.thing[change.kind];
  return refitSaid(change) ?? moneySaid(change) ?? timeSaid(change) ?? specialFigure(change);
}

/** What is written while it goes together again. */
function refitSaid(change: Change): string | undefined {
  const say = words();
  if ('fit' in change) return say.history.fit[change.fit];
  if ('compared' in change) return say.supply[change.compared].toLowerCase();
  if ('commissioning_step' in change) return say.commissioning.steps[change.commissioning_step][0];
  if ('check' in change) return say.before.check[change.check];
  if ('tightened' in change) return say.tightening.states[change.tightened];
  if ('lubrication' in change) return say.tightening.lubrications[change.lubrication];
  if ('paint' in change) return say.refit.paints[change.paint];
  if ('torque_unit' in change) return torqueSign(change.torque_unit);
  if ('angle' in change) return `${number(change.angle)}\u00a0°`;
  return undefined;
}

type Figure = number | string | boolean | { minor: number; currency: string };
const MONEY: readonly FieldName[] = ['hour_value', 'hour_value_then', 'threshold', 'cash', 'cash_least', 'cash_most', 'freight', 'tax', 'duty', 'consumables', 'surcharge', 'shipping', 'free_from', 'minimum_order', 'minimum_charge', 'from_value', 'budget', 'sold', 'rate'];
const HOURS: readonly FieldName[] = ['own_time', 'own_time_least', 'own_time_most', 'strip_again', 'own_hours', 'fit_time'];
const CHANCES: readonly FieldName[] = ['chance', 'chance_least', 'chance_most', 'withheld', 'back_order'];
const MONTHS: readonly FieldName[] = ['life', 'life_least', 'life_most', 'warranty'];
const PERCENT: readonly FieldName[] = ['interest', 'tax_rate', 'restocking', 'duty_rate'];
const CERTAINTIES: readonly FieldName[] = ['cash_certainty', 'own_time_certainty', 'chance_certainty', 'life_certainty', 'wait_certainty'];
const DAYS: readonly FieldName[] = ['wait', 'wait_least', 'wait_most', 'return_window', 'surcharge_deadline', 'checking_days'];
const DATES: readonly FieldName[] = ['due', 'arrived', 'valid_until', 'latest'];
const VOLUMES: readonly FieldName[] = ['drained', 'filled', 'capacity'];

function moneySaid(change: Change): string | undefined {
  const [field, value] = Object.entries(change)[0] as [FieldName, Figure];
  return MONEY.includes(field) && typeof value === 'object' ? money(value) : undefined;
}

function timeSaid(change: Change): string | undefined {
  const say = words().history;
  const [field, value] = Object.entries(change)[0] as [FieldName, Figure];
  if (CERTAINTIES.includes(field)) return say.certainty[value as Certainty];
  if ('correctness' in change) return words().costing.correctness[change.correctness];
  if (DATES.includes(field) && typeof value === 'string') return dayWords(value);
  if (typeof value !== 'number') return undefined;
  if (VOLUMES.includes(field)) return volumeWords(value, 'metric');
  if (HOURS.includes(field)) return hours(value);
  if (CHANCES.includes(field)) return say.ofHundred(number(value / 100, 1));
  if (MONTHS.includes(field)) return value % 12 === 0 ? count(value / 12, 'year') : count(value, 'month');
  if (PERCENT.includes(field)) return say.percent(number(value / 100, 2));
  if (field === 'exchange_rate') return number(value / 1_000_000, 6);
  return DAYS.includes(field) ? count(value, 'day') : undefined;
}

function specialFigure(change: Change): string | undefined {
  if ('tag' in change) return String(change.tag).padStart(4, '0');
  if ('taken' in change) return moment(new Date(change.taken));
  if ('ended' in change) return moment(new Date(change.ended));
  if ('handed_out' in change) return moment(new Date(change.handed_out));
  if ('held' in change) return words().history.heldOf(change.held.length);
  if ('length' in change) return bytes(change.length);
  if ('lasts' in change) return length(change.lasts / 1000);
  if ('thickness' in change) return `${number(change.thickness / 1000, 3)}\u00a0mm`;
  if ('long' in change || 'wide' in change || 'high' in change) return `${number(Object.values(change)[0] as number / 1_000_000, 1)}\u00a0mm`;
  if ('mass' in change) return `${number(change.mass / 1000, 3)}\u00a0kg`;
  if ('area' in change) return `${number(change.area / 10_000, 4)}\u00a0dm²`;
  if ('from_mass' in change) return `${number(change.from_mass / 1000, 3)}\u00a0kg`;
  if ('year' in change) return String(change.year);
  return undefined;
}

// An entry tells of an answer apart from its question; what a code means is the same with nearly all that have it.
function outcomeWord(code: string): string {
  const all: CheckWords[] = Object.values(words().checks);
  const own: Record<string, string> = words().ownOutcomes;
  return all.find(({ outcomes }) => Object.hasOwn(outcomes, code))?.outcomes[code] ?? own[code] ?? code;
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
