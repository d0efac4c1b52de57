import type { AspectFrom, FieldName, RatiosUnread, RollingFrom, Swap, TyreUnread, Units } from '../../bridge/protocol';
import { capital, count, KEEP, listed } from './format';
import type { Vocabulary } from './vocabulary';

/** How fast the road goes by, before and after a swap of axle, gearbox or tyres. */
export const gearing = (trade: Vocabulary) => ({
  title: 'Gearing', link: 'Gearing of a swap', second: (n: number) => count(n, 'gearing'),
  add: 'Add a gearing', change: 'Change the gearing', put: 'Put it down', done: (name: string) => `${name} put down`, strike: 'Strike out', struck: (name: string) => `${name} struck out`, noName: 'no name yet', sets: 'What is compared', setsCount: 'tap to change', compared: 'Compare',
  none: { first: 'No gearing yet.', then: `Put down what is in it now: axle ratio, gears, ${trade.tyre}. Then what could go in. Both are drawn side by side.` },
  onlyOne: 'Add what could go in: a longer axle, another gearbox, other wheels. It is drawn beside this one.',
  noBefore: 'Mark one of them as before: then the others are compared with it.',
  swaps: { before: 'before', after: 'after', candidate: 'thought about' } satisfies Record<Swap, string>,
  noSwap: 'not in a swap',
  form: {
    name: 'Name', nameHint: 'As you call it: as found, later axle, five-speed box.', needsName: 'Give it a name, as you call it.', swap: 'Where it stands', vehicle: 'Vehicle', anyVehicle: 'no particular one',
    axle: 'Axle ratio', axleHint: 'As 4.22, or by its teeth, as 9/38.', gears: 'Gears', gearsHint: 'Each ratio, first gear first or top first: 3.94, 2.30, 1.49, 1.00. Reverse is left out.',
    overdrive: 'Overdrive', overdriveHint: 'Its ratio, as 0.778. Empty without one.', overdriveOn: 'It works on', overdriveOns: { 1: 'top only', 2: 'top and next', 3: 'upper three' },
    tyre: `${capital(trade.tyre)} marking`, tyreHint: `As on the wall of the ${trade.tyre}: 165 R 13, 205/65 R 15, 5.20-13.`,
    circumference: 'Rolls in one turn, measured', circumferenceHint: `Chalk floor and ${trade.tyre}, roll it once round with the weight on it, measure between the marks. Goes before the marking.`,
    more: 'From a data book, or across the tread', turns: (units: Units) => (units === 'inch' ? 'Turns a mile' : 'Turns a kilometre'), turnsHint: `As the maker of the ${trade.tyre} gives it.`, diameter: `${capital(trade.tyre)} across, measured`, diameterHint: 'Tread to tread, without weight on it.',
    highest: 'Highest engine speed', highestHint: 'As the handbook allows. Empty when you do not know.', remark: 'Remark', turnsUnit: 'a minute',
    wrong: { ratio: 'Give a ratio, like 4.22 or 9/38.', overdrive: 'Give a ratio, like 0.778.', turns: 'Give a figure, like 881.', whole: 'Give whole turns, like 5500.' },
  },
  why: {
    tyre: {
      empty: 'Nothing is there.', form: `No ${trade.tyre} size.`, width: `No ${trade.tyre} is as wide or as narrow as that.`, aspect: 'The height is 25 to 100 % of the width.', rim: 'The rim is 8 to 24 inches.', rest: 'What stands after the size cannot be read.',
    } satisfies Record<TyreUnread, string>,
    tyreThen: `Give it like 165 R 13 or 5.20-13, or leave it empty and measure how far it rolls.`,
    gears: {
      empty: 'Nothing is there.', 'not-a-ratio': 'Give each as a figure, like 3.94.', commas: 'Put a space between them: 3,94 2,30 1,49 1.', order: 'They must fall from first to top, or rise: otherwise it is a guess which is which.', 'too-many': 'No gearbox has as many.',
    } satisfies Record<RatiosUnread, string>,
  },
  needs: (what: readonly string[]) => `Still needed: ${listed(what)}.`,
  need: { axle_ratio: 'axle ratio', gear_ratios: 'gears', tyre: `a ${trade.tyre} size, or how far it rolls` } as Partial<Record<FieldName, string>>,
  gear: (n: number, of: number, over: boolean) => `${over ? 'overdrive ' : ''}${n === of ? 'top' : ordinal(n)}`,
  axleOf: (ratio: string) => `axle ${ratio}`, overdriveOf: (ratio: string) => `overdrive ${ratio}`,
  unit: { inch: 'mph', metric: 'km/h' } satisfies Record<Units, string>,
  per1000: (unit: string) => `${unit} at 1000 turns`,
  top: (what: { gear: string; unit: string; was: string; is: string }) => `In ${what.gear}, 1000 turns a minute is ${what.was}${KEEP}${what.unit} before, ${what.is}${KEEP}${what.unit} after:`,
  tops: (what: { unit: string; was: string; is: string; gearWas: string; gearIs: string }) => `At 1000 turns a minute, ${what.gearWas} is ${what.was}${KEEP}${what.unit} before, ${what.gearIs} ${what.is}${KEEP}${what.unit} after:`,
  fewer: (percent: string) => `${percent}${KEEP}% fewer turns at the same speed.`, more: (percent: string) => `${percent}${KEEP}% more turns at the same speed.`, same: 'the same turns at the same speed.',
  pull: { less: (percent: string) => `It pulls ${percent}${KEEP}% less there.`, more: (percent: string) => `It pulls ${percent}${KEEP}% more there.` },
  alone: (what: { gear: string; unit: string; is: string }) => `In ${what.gear}, 1000 turns a minute is ${what.is}${KEEP}${what.unit}.`,
  highest: (what: { was?: string; is: string; unit: string }) => `At the highest engine speed that is ${what.was ? `${what.was}${KEEP}${what.unit} before, ` : ''}${what.is}${KEEP}${what.unit}${what.was ? ' after' : ''}, if it pulls it.`,
  chart: 'Road speed by engine speed', key: { before: 'before', after: 'after' }, engine: 'engine, turns a minute', overdriven: '+ with overdrive', road: (unit: string) => `road, ${unit}`,
  chartSays: (what: { names: readonly string[]; unit: string }) => `Road speed in ${what.unit} by engine speed, a line for each gear: ${listed(what.names)}. The figures stand in the table below.`,
  table: { caption: 'Gear by gear', gear: 'Gear', before: 'before', after: 'after', now: 'here', change: 'turns', at: (speed: string) => `turns at ${speed}`, over: 'over', overMeans: 'over: more than the engine turns.' },
  speed: 'Engine speed at', speedHint: (unit: string) => `A road speed, like ${unit === 'mph' ? '60' : '100'}.`, wrongSpeed: 'Give a speed, like 60.',
  tyres: `${capital(trade.tyre)}s`, from: {
    circumference: 'measured on the floor', turns: 'turns from a data book', diameter: 'measured across the tread', marking: 'by its marking, nominal',
  } satisfies Record<RollingFrom, string>,
  rolls: (what: { turns: string; per: string; across: string; round: string }) => `${what.round} a turn, ${what.turns} turns a ${what.per}, ${what.across} across.`, both: 'before and after', perUnit: { inch: 'mile', metric: 'kilometre' } satisfies Record<Units, string>,
  nominal: `With the weight on it a ${trade.tyre} turns about 1 to 3 % oftener than that: true speeds are as much lower. Measured on the floor it counts as it rolls.`,
  unloaded: `Measured without weight: rolling, a ${trade.tyre} turns about 1 to 3 % oftener.`,
  beside: { more: (percent: string) => `${percent}${KEEP}% more turns than its marking says.`, less: (percent: string) => `${percent}${KEEP}% fewer turns than its marking says.`, same: 'As its marking says.' },
  aspect: {
    marked: '', metric: 'The marking tells no height: 80 % of the width is taken, as is usual. Some makes were 82 %.', inch: `A cross-ply size tells no height: the usual one of its kind is taken, which may be 3 % out either way. Measure it before you buy.`,
  } satisfies Record<AspectFrom, string>,
  mind: 'Before you do it', slow: 'It shows too little: you drive faster than you read.',
  speedometer: (what: { shown: string; true: string; unit: string }) => `A speedometer that is driven from the gearbox and was right shows ${what.shown} at a true ${what.true}${KEEP}${what.unit}. Have it recalibrated, or its drive gear changed.`,
  wheelSpeedometer: (what: { shown: string; true: string; unit: string }) => `One that is driven from a wheel shows ${what.shown}.`,
  mixed: `One ${trade.tyre} was measured with the weight on it, the other is nominal: what is compared here may be 1 to 3 % out. Measure both.`, faster: 'Brakes have to suit the speed that it can now reach.', otherTyres: `${capital(trade.tyre)}s have to suit rim, load and speed, and turn freely at full lock and full bump.`, manual: 'What the manual says goes before all of this.',
});

function ordinal(n: number): string {
  return ['1st', '2nd', '3rd'][n - 1] ?? `${n}th`;
}
