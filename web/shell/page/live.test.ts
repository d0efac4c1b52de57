import { expect, test, vi } from 'vitest';
import type { Query } from '../bridge/protocol';

const asked: Query[] = [];
vi.mock('../bridge/desk', () => ({
  desk: {
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
    // As the worker does: a question with what is no id cannot be read.
    ask: (query: Query) => {
      asked.push(query);
      return 'part' in query && query.part && !/^[0-9a-f]{32}$/.test(query.part) ? Promise.reject(new Error('not an id')) : Promise.resolve({ view: 'nothing' });
    },
  },
}));

const { Live } = await import('./live.ts');

const settle = (): Promise<void> => new Promise((resolve) => { setTimeout(resolve); });
const host = { addController: () => undefined, removeController: () => undefined, requestUpdate: vi.fn(), updateComplete: Promise.resolve(true) };

async function found(query: Query): Promise<boolean> {
  host.requestUpdate.mockClear();
  const live = new Live(host, 'part', () => query);
  live.hostConnected();
  await settle();
  expect(host.requestUpdate).toHaveBeenCalled();
  return !live.nothing;
}

test.each(['zzz', 'ABCDEF00000000000000000000000000', '0a1b', 'a'.repeat(33)])('what cannot be an id names nothing: %s', async (part) => {
  expect(await found({ ask: 'part', part })).toBe(false);
});

test('an id that no record has names nothing either', async () => {
  expect(await found({ ask: 'part', part: 'a'.repeat(32) })).toBe(false);
  expect(asked).toContainEqual({ ask: 'part', part: 'a'.repeat(32) });
});

test('filters that are left out are no ids', async () => {
  asked.length = 0;
  await found({ ask: 'parts', find: 'zzz' });
  expect(asked).toHaveLength(1);
});
