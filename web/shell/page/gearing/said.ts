import type { GearingLine, GearRow, RollingView, Units } from '../../bridge/protocol';
import { locale, words } from '../words';
import { KEEP, number } from '../words/format';
import { per1000 } from './lines';

/** "4", "4+" with the overdrive in: at the end of a line. */
export function gearShort({ gear, overdriven }: GearRow): string {
  return overdriven ? `${gear}+` : String(gear);
}

export function gearSaid(row: GearRow, rows: readonly GearRow[]): string {
  return words().gearing.gear(row.gear, Math.max(...rows.map(({ gear }) => gear)), row.overdriven);
}

export function topOf(rows: readonly GearRow[]): GearRow | undefined {
  return rows.find(({ top }) => top);
}

const percent = (share: number): string => number(Math.abs(share) * 100, 1);
/** Always with its tenth: what is compared stands in columns. */
export function speedSaid(row: GearRow, units: Units): string {
  return new Intl.NumberFormat(locale(), { minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(per1000(row, units));
}

/** Less than a tenth of a percent is nothing that anybody notices. */
const isSame = (share: number): boolean => Math.abs(share) < 5e-4;

/** What the swap comes to in the highest gear, as a sentence. */
export function swapSaid(before: GearingLine | undefined, after: GearingLine, units: Units): { figures: string; change: string; rest: string } | null {
  const say = words().gearing;
  const is = topOf(after.rows);
  if (!is) return null;
  const unit = say.unit[units];
  const figure = (row: GearRow): string => speedSaid(row, units);
  const was = topOf(before?.rows ?? []);
  const change = after.against?.top;
  const most = highestSaid(was, is, units);
  if (!before || !was || change === undefined) return { figures: say.alone({ gear: gearSaid(is, after.rows), unit, is: figure(is) }), change: '', rest: most };
  const [gearWas, gearIs] = [gearSaid(was, before.rows), gearSaid(is, after.rows)];
  const alike = gearWas === gearIs && was.gear === is.gear;
  const figures = alike ? say.top({ gear: gearIs, unit, was: figure(was), is: figure(is) }) : say.tops({ unit, was: figure(was), is: figure(is), gearWas: numbered(was, gearWas), gearIs: numbered(is, gearIs) });
  const pull = isSame(change) ? '' : change < 0 ? say.pull.less(percent(change)) : say.pull.more(percent(change));
  return { figures, change: isSame(change) ? say.same : change < 0 ? say.fewer(percent(change)) : say.more(percent(change)), rest: [pull, most].filter(Boolean).join(' ') };
}

/** Two tops of gearboxes with different numbers of gears are told apart by their numbers. */
function numbered({ gear, overdriven }: GearRow, said: string): string {
  return overdriven ? said : `${said} (${gear})`;
}

function highestSaid(was: GearRow | undefined, is: GearRow, units: Units): string {
  const say = words().gearing;
  if (is.highest_kmh === undefined) return '';
  const speed = (kmh: number): string => number(units === 'inch' ? kmh / 1.609344 : kmh);
  return say.highest({ is: speed(is.highest_kmh), unit: say.unit[units], ...(was?.highest_kmh !== undefined && { was: speed(was.highest_kmh) }) });
}

/** What one has to look after, where it matters. */
export function mindSaid(before: GearingLine | undefined, after: GearingLine, units: Units): string[] {
  const say = words().gearing;
  const { against } = after;
  if (!before || !against) return [];
  const [unit, from] = units === 'inch' ? ['mph', 60] as const : ['km/h', 100] as const;
  const shown = (share: number): string => number(from * (1 + share));
  const { speedometer, wheel_speedometer, rolling, top } = against;
  const told: string[] = [];
  if ((before.rolling?.loaded === undefined) !== (after.rolling?.loaded === undefined)) told.push(say.mixed);
  // One in a hundred is within what needles show.
  if (speedometer !== undefined && Math.abs(speedometer) >= 0.01) told.push(say.speedometer({ shown: shown(speedometer), true: String(from), unit }) + (speedometer < 0 ? ` ${say.slow}` : ''));
  if (Math.abs(wheel_speedometer) >= 0.01) told.push(say.wheelSpeedometer({ shown: shown(wheel_speedometer), true: String(from), unit }));
  if (Math.abs(rolling) >= 0.005 || before.record.values.tyre !== after.record.values.tyre) told.push(say.otherTyres);
  if (top !== undefined && top < -0.01) told.push(say.faster);
  if (told.length) told.push(say.manual);
  return told;
}

/** How far the tyre of a set rolls, and how that is known. */
export function rollingSaid({ rolling, tyre }: GearingLine, units: Units): { how: string; figures: string; notes: string[] } | null {
  const say = words().gearing;
  if (!rolling) return null;
  const notes: string[] = [];
  if (rolling.from === 'marking' && tyre && say.aspect[tyre.aspect_from]) notes.push(say.aspect[tyre.aspect_from]);
  if (rolling.loaded) notes.push(rolling.measured ? say.unloaded : say.nominal);
  const { beside_marking: beside } = rolling;
  if (beside !== undefined) notes.push(isSame(beside) ? say.beside.same : beside > 0 ? say.beside.more(percent(beside)) : say.beside.less(percent(beside)));
  return { how: say.from[rolling.from], figures: rolls(rolling, units), notes };
}

function rolls({ circumference, diameter, turns_per_mile, turns_per_km }: RollingView, units: Units): string {
  const length = (millimetres: number): string => (units === 'inch' ? `${number(millimetres / 25.4, 1)}${KEEP}in` : `${number(millimetres)}${KEEP}mm`);
  return words().gearing.rolls({ turns: number(units === 'inch' ? turns_per_mile : turns_per_km), per: words().gearing.perUnit[units], across: length(diameter), round: length(circumference) });
}

/** "axle 4.22 · overdrive 0.778 · 5.60-13". */
export function ratiosSaid({ record, vehicle }: GearingLine): string {
  const say = words().gearing;
  const { axle_ratio, overdrive, tyre } = record.values;
  return [vehicle ?? '', axle_ratio === undefined ? '' : say.axleOf(ratio(axle_ratio)), overdrive === undefined ? '' : say.overdriveOf(ratio(overdrive)), tyre ?? ''].filter(Boolean).join(' · ');
}

/** As the trade writes them: 3.70, 4.22, 3.636. */
function ratio(parts: number): string {
  return new Intl.NumberFormat(locale(), { minimumFractionDigits: 2, maximumFractionDigits: 4 }).format(parts / 1e4);
}
