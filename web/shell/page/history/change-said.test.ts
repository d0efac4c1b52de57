import { expect, test, vi } from 'vitest';
import type { Change } from '../../bridge/protocol';

vi.mock('../judge/said', () => ({ checkWords: () => ({ outcomes: {}, name: '' }), familyWords: () => undefined, featureWords: () => ({ name: '' }) }));
vi.mock('../routes/route-word', () => ({ routeWord: (route: string) => route }));

const { changeSaid } = await import('./change-said');
const said = (change: Change, beside: readonly Change[] = []): string => changeSaid(change, beside).value.replace(/\u00a0/g, ' ');

// Catches: "54,000,000" for a tightening figure.
test('a tightening figure in the unit it was read in', () => {
  expect(said({ torque: 54_000_000 })).toBe('54 N·m');
  expect(said({ torque: 54_232_718 }, [{ torque_unit: 'pound-foot' }])).toBe('40 lbf·ft');
  expect(said({ torque_unit: 'kilogram-metre' })).toBe('kgf·m');
  expect(said({ angle: 90 })).toBe('90 °');
  expect(said({ lubrication: 'oiled' })).toBe('oiled');
  expect(said({ tightened: 'finger-tight' })).toBe('finger-tight');
});

test('hours, volumes and days as they are said', () => {
  expect(said({ fit_time: 90 })).toBe(said({ own_time: 90 }));
  expect(said({ fit_time: 90 })).not.toBe('90');
  expect(said({ drained: 4500 })).toBe('4.5 L');
  expect(said({ filled: 500 })).toBe('500 ml');
  expect(said({ due: '2019-03-15' })).toBe('15 Mar 2019');
  expect(said({ arrived: '2019-12-31' })).toBe('31 Dec 2019');
  expect(said({ latest: '2019-03-15' })).toBe('15 Mar 2019');
  expect(said({ checking_days: 2 })).toBe('2 days');
});

// Catches: a code of the record where a person reads.
test('codes of the refit in words', () => {
  expect([said({ fit: 'fitted' }), said({ fit: 'tried' }), said({ fit: 'off-again' })]).toEqual(['on', 'on for trial', 'off again for finish']);
  expect([said({ compared: 'right' }), said({ compared: 'wrong' })]).toEqual(['right', 'wrong']);
  expect(said({ commissioning_step: 'retighten' })).toBe('Tightened again');
  expect(said({ check: 'free-play' })).toBe('Free play');
  expect([said({ paint: 'before' }), said({ paint: 'after' })]).toEqual(['before paint', 'after paint']);
  expect(changeSaid({ clear: 'torque' }).value).toBe('emptied');
});
