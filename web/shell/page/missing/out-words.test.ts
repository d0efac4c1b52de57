import { afterEach, expect, test } from 'vitest';
import type { StoredLine, Values } from '../../bridge/protocol';
import { setSpeech } from '../words';
import { outSecond } from './out-words';

const NOW = new Date(2024, 2, 10, 12, 0);
const said = (values: Values, late?: number): string =>
  outSecond({ out: { id: 'o', values, struck: false, conflicts: [] }, ...(late !== undefined && { late }) } as unknown as Pick<StoredLine, 'out' | 'late'>, NOW).replace(/\u00a0/g, ' ');

afterEach(() => { setSpeech('british'); });

test('what is out, with whom, until when', () => {
  expect(said({ out_for: 'work', who: 'Anvil Row', due: '2024-03-07' }, 3)).toBe('Out for work at Anvil Row, due 7 Mar, 3 days late');
  expect(said({ out_for: 'work', taken: new Date(2024, 1, 1).getTime() })).toBe('Out for work, since 1 Feb');
  expect(outSecond({})).toBe('');
});

// Catches: "On loan at Dave".
test('a loan is to somebody, and so is what is sent out', () => {
  expect(said({ out_for: 'loan', who: 'Dave', due: '2024-05-01' })).toBe('On loan to Dave, due 1 May');
  setSpeech('american');
  expect(said({ out_for: 'work', who: 'Anvil Row' })).toBe('Sent out to Anvil Row');
  expect(said({ out_for: 'loan', who: 'Dave' })).toBe('On loan to Dave');
});

test('a day of another year has it with it', () => {
  expect(said({ out_for: 'loan', who: 'Dave', taken: new Date(2022, 9, 2).getTime() }, 520)).toBe('On loan to Dave, since 2 Oct 2022, out for 520 days');
  expect(said({ out_for: 'work', due: '2025-01-09' })).toBe('Out for work, due 9 Jan 2025');
});
