import { expect, test, vi } from 'vitest';
import type { RecordView } from '../../bridge/protocol';

const desk = { stores: true };
vi.mock('../carry-out', () => ({ carryOut: () => Promise.resolve({ ok: desk.stores, problems: [] }) }));

const { putDown } = await import('./write.ts');
const record = { id: 'a', seen: {} } as RecordView;

test('a line is put down only when it is stored', async () => {
  expect(await putDown(record, { name: 'Hub' }, '')).toBe('');
  desk.stores = false;
  expect(await putDown(record, { name: 'Hub' }, '')).toBeNull();
  expect(await putDown(undefined, { name: 'Hub' }, '')).toBeNull();
});
