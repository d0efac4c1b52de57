import { expect, test } from 'vitest';
import type { GearingLine, GearRow } from '../../bridge/protocol';
import { gearShort, mindSaid, rollingSaid, swapSaid } from './said';

const row = (gear: number, mph: number, more: Partial<GearRow> = {}): GearRow => ({ gear, overdriven: false, top: false, ratio: 1, overall: 4, mph, kmh: mph * 1.609344, ...more });
const line = (rows: GearRow[], more: Partial<GearingLine> = {}): GearingLine => ({ record: { id: 'a'.repeat(32), kind: 'gearing', values: { name: 'x', tyre: '5.20-13' }, struck: false, seen: {}, conflicts: [] }, rows, ...more });
const plain = (text: string | undefined): string => (text ?? '').replace(/\u00a0/g, ' ');
const against = (top: number, more: Partial<NonNullable<GearingLine['against']>> = {}) => ({ before: 'a'.repeat(32), top, rolling: 0, speedometer: 0, wheel_speedometer: 0, ...more });
const all = (said: ReturnType<typeof swapSaid>): string => plain([said?.figures, said?.change, said?.rest].filter(Boolean).join(' '));

test('a longer axle, in one sentence', () => {
  const said = swapSaid(line([row(3, 12), row(4, 17.62, { top: true })]), line([row(3, 14), row(4, 20.1, { top: true })], { against: against(-0.1232) }), 'inch');
  expect(all(said)).toBe('In top, 1000 turns a minute is 17.6 mph before, 20.1 mph after: 12.3 % fewer turns at the same speed. It pulls 12.3 % less there.');
});

test('tops that differ are told apart', () => {
  const four = line([row(4, 17.6, { top: true })]);
  expect(all(swapSaid(four, line([row(5, 22, { top: true })], { against: against(-0.2) }), 'inch'))).toContain('top (4) is 17.6 mph before, top (5) 22.0 mph after');
  expect(all(swapSaid(four, line([row(4, 17.6), row(4, 22, { top: true, overdriven: true })], { against: against(0.2) }), 'inch'))).toContain('overdrive top 22.0 mph after: 20 % more turns');
  expect(all(swapSaid(four, line([row(4, 17.6, { top: true })], { against: against(0.0001) }), 'inch'))).toMatch(/the same turns at the same speed\.$/);
  expect(all(swapSaid(undefined, four, 'metric'))).toBe('In top, 1000 turns a minute is 28.3 km/h.');
  expect(swapSaid(undefined, line([]), 'metric')).toBeNull();
});

test('a speedometer that would show too little is told', () => {
  const before = line([]);
  const told = mindSaid(before, line([], { against: against(-0.123, { speedometer: -0.123 }) }), 'inch').map(plain);
  expect(told[0]).toContain('shows 53 at a true 60 mph');
  expect(told[0]).toContain('too little');
  expect(told.join(' ')).toContain('Brakes');
  expect(told.join(' ')).not.toContain('full lock');
  expect(mindSaid(before, line([], { against: against(0.05, { speedometer: 0.05, wheel_speedometer: 0.05, rolling: -0.048 }) }), 'metric').map(plain).join(' ')).toMatch(/shows 105 at a true 100 km\/h.*wheel shows 105.*full lock/);
  expect(mindSaid(before, line([], { against: against(0) }), 'inch')).toEqual([]);
  expect(mindSaid(undefined, line([]), 'inch')).toEqual([]);
  const floor = { from: 'circumference' as const, measured: true, circumference: 1826, diameter: 581.2, turns_per_mile: 881.4, turns_per_km: 547.6 };
  expect(mindSaid(line([], { rolling: floor }), line([], { against: against(0), rolling: { ...floor, from: 'marking', measured: false, loaded: [0.013, 0.031] } }), 'inch').map(plain)[0]).toContain('Measure both');
  expect(mindSaid(line([], { rolling: floor }), line([], { against: against(0), rolling: floor }), 'inch')).toEqual([]);
});

test('a nominal size says what the weight does to it; a measured one what the marking said', () => {
  const rolling = { from: 'marking' as const, measured: false, circumference: 1826, diameter: 581.2, turns_per_mile: 881.4, turns_per_km: 547.6, loaded: [0.013, 0.031] as [number, number] };
  const nominal = rollingSaid(line([], { rolling, tyre: { width: 132, aspect: 0.95, rim: 330.2, aspect_from: 'inch' } }), 'metric');
  expect(plain(nominal?.figures)).toBe('1,826 mm a turn, 548 turns a kilometre, 581 mm across.');
  expect(nominal?.notes).toHaveLength(2);
  const measured = rollingSaid(line([], { rolling: { ...rolling, from: 'circumference', measured: true, loaded: undefined, beside_marking: 0.021 } as never }), 'inch');
  expect(measured?.notes.map(plain)).toEqual(['2.1 % more turns than its marking says.']);
  expect(rollingSaid(line([]), 'inch')).toBeNull();
});

test('gears are named shortly at their lines', () => {
  expect([gearShort(row(4, 1)), gearShort(row(4, 1, { overdriven: true }))]).toEqual(['4', '4+']);
});
