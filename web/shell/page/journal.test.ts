import { beforeEach, expect, test, vi } from 'vitest';
import * as journal from './journal.ts';

const second = vi.hoisted(() => new Map<string, string>());
vi.mock('./journal-mirror', () => ({
  mirror: (key: string, line: string) => { second.set(key, line); },
  mirrored: () => Promise.resolve([...second]),
}));

const kept = new Map<string, string>();
let refuse = false;

beforeEach(() => {
  kept.clear();
  second.clear();
  vi.stubGlobal('document', new EventTarget());
  refuse = false;
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => {
      if (refuse) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, value);
    },
  });
});

test('what is typed is there at once, and gone when it is saved', () => {
  journal.typing('name:1', 'Hu');
  journal.typing('name:1', 'Hub');
  journal.typing('name:2', 'Cap');
  expect(journal.typedBefore('name:1')).toBe('Hub');
  journal.typed('name:1');
  expect(journal.typedBefore('name:1')).toBeNull();
  expect(journal.typedBefore('name:2')).toBe('Cap');
});

test('the oldest gives way, the latest never', () => {
  for (let i = 0; i < 10; i += 1) journal.typing(`note:${i}`, 'x'.repeat(10_000));
  expect(kept.get('asfound.typing')?.length ?? 0).toBeLessThan(64_000);
  expect(journal.typedBefore('note:0')).toBeNull();
  expect(journal.typedBefore('note:9')).toHaveLength(10_000);
});

test('each job keeps what is in hand at its own strip', () => {
  journal.hold('job-1', { assembly: 'a', part: 'p' });
  journal.hold('job-2', { draft: { id: 'd', tag: 7 } });
  journal.hold('job-1', { waiting: true });
  expect(journal.inHand('job-1')).toEqual({ assembly: 'a', part: 'p', draft: null, waiting: true });
  expect(journal.inHand('job-2')).toEqual({ assembly: null, part: null, draft: { id: 'd', tag: 7 }, waiting: false });
});

test('moving about leaves what is in hand alone', () => {
  journal.hold('job', { part: 'p' });
  journal.at({ job: 'job', hash: '#/parts' });
  expect(journal.where().hash).toBe('#/parts');
  expect(journal.inHand('job').part).toBe('p');
});

test.each(['not json', '7', '{"hash":1}', '[["one"]]', 'null', '{"at":1}', '{"at":1,"value":{"hash":1}}', '{"at":1,"value":[["one"]]}'])('damage is taken for nothing: %s', (damage) => {
  kept.set('asfound.where', damage);
  kept.set('asfound.typing', damage);
  expect(journal.where()).toEqual({ job: null, hash: '', strips: {} });
  expect(journal.typedBefore('x')).toBeNull();
});

test('storage that refuses does not stop the work', () => {
  refuse = true;
  journal.typing('x', 'y');
  journal.hold('job', { part: 'p' });
  expect(journal.typedBefore('x')).toBeNull();
});

test('what only the second copy has comes back', async () => {
  journal.typing('name:1', 'Hu');
  const early = kept.get('asfound.typing') ?? '';
  journal.typing('name:1', 'Hub');
  kept.set('asfound.typing', early);
  expect(journal.typedBefore('name:1')).toBe('Hu');
  await journal.recover();
  expect(journal.typedBefore('name:1')).toBe('Hub');
});

test('an older second copy does not replace what is here', async () => {
  journal.typing('name:1', 'Hu');
  const early = second.get('asfound.typing') ?? '';
  journal.typing('name:1', 'Hub');
  second.set('asfound.typing', early);
  await journal.recover();
  expect(journal.typedBefore('name:1')).toBe('Hub');
});
