import { beforeEach, expect, test, vi } from 'vitest';

const kept = new Map<string, string>();
vi.mock('./journal', () => ({
  typing: (key: string, text: string) => { kept.set(key, text); },
  typed: (key: string) => { kept.delete(key); },
  typedBefore: (key: string) => kept.get(key) ?? null,
}));

const { formKept, keepForm } = await import('./form-kept.ts');

beforeEach(() => { kept.clear(); });

// Break: keep the whole draft.
test('what nobody touched follows the record that came in meanwhile', () => {
  const begun = { from: 'Hare & Wick', due: '2026-03-14' };
  keepForm('a', begun, { ...begun, due: '2026-03-20' });
  expect(formKept('a', { from: 'Anvil Row', due: '2026-03-14' })).toEqual({ from: 'Anvil Row', due: '2026-03-20' });
});

// Break: leave `together` out.
test('a figure keeps the unit it was typed in', () => {
  const begun = { torque: '40', unit: 'newton-metre', remark: '' };
  keepForm('a', begun, { ...begun, torque: '54' }, [['torque', 'unit']]);
  expect(formKept('a', { torque: '30', unit: 'pound-foot', remark: 'dry' })).toEqual({ torque: '54', unit: 'newton-metre', remark: 'dry' });
});

test('typed back to what stood there, nothing is kept', () => {
  const begun = { from: 'Anvil Row' };
  keepForm('a', begun, { from: 'Anvil' });
  keepForm('a', begun, begun);
  expect(kept.size).toBe(0);
});
