import { beforeEach, expect, test, vi } from 'vitest';
import type { Command, TeardownView } from '../../bridge/protocol';

/** A desk that remembers what was asked of it and answers when it is told to. */
const sent: { command: Command; id: string | undefined; answer: (ok: boolean) => void }[] = [];
const view: { now: TeardownView } = { now: { open: [], next_tag: 147, names: [], places: [], joints: [], parts: [] } };
let ids = 0;

vi.mock('../../bridge/desk', () => ({
  newId: () => `id-${++ids}`,
  desk: {
    ask: () => Promise.resolve({ view: 'teardown', ...view.now }),
    command: (command: Command, _beside: unknown, id?: string) => new Promise((resolve) => {
      sent.push({ command, id, answer: (ok) => { resolve({ ok, problems: [] }); } });
    }),
  },
}));

const { Bench } = await import('./bench.ts');
type BenchType = InstanceType<typeof Bench>;

const settle = (): Promise<void> => new Promise((resolve) => { setTimeout(resolve); });
const shot = () => ({ small: Promise.resolve(new Blob()), bytes: Promise.resolve({ bytes: new ArrayBuffer(3), media_type: 'image/jpeg' }) });
const made = (command: Command): string[] => (command.do === 'all' ? command.commands : [command]).map((one) => (one.do === 'create' ? one.kind : one.do));
const last = (): (typeof sent)[number] => {
  const one = sent[sent.length - 1];
  if (!one) throw new Error('nothing was sent');
  return one;
};

async function start(): Promise<BenchType> {
  const bench = new Bench('job');
  await bench.refresh();
  return bench;
}

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => kept.set(key, value) });
  sent.length = 0;
  view.now = { open: [], next_tag: 147, names: [], places: [], joints: [], parts: [] };
});

test('two quick taps are one part with two photos', async () => {
  const bench = await start();
  const part = bench.part ?? '';
  bench.photo(shot());
  bench.photo(shot());
  await settle();
  expect(sent).toHaveLength(1);
  expect(made(last().command)).toEqual(['part', 'photo']);
  last().answer(true);
  await settle();
  expect(made(last().command)).toEqual(['photo']);
  last().answer(true);
  await settle();
  expect(bench.tiles.of(part).map(({ state }) => state)).toEqual(['kept', 'kept']);
});

test('the part carries the number that was shown', async () => {
  const bench = await start();
  expect(bench.tag).toBe(147);
  bench.photo(shot());
  await settle();
  const { command } = last();
  expect(command.do === 'all' && command.commands[0]).toMatchObject({ do: 'create', kind: 'part', changes: [{ tag: 147 }] });
});

test('no tick before the answer', async () => {
  const bench = await start();
  const part = bench.part ?? '';
  bench.photo(shot());
  await settle();
  expect(bench.tiles.of(part)[0]?.state).toBe('saving');
  last().answer(true);
  await settle();
  expect(bench.tiles.of(part)[0]?.state).toBe('kept');
});

test('when the first photo is not saved the second makes the part, and the first is tried again as the same', async () => {
  const bench = await start();
  const part = bench.part ?? '';
  bench.photo(shot());
  bench.photo(shot());
  await settle();
  const first = last();
  first.answer(false);
  await settle();
  expect(made(last().command)).toEqual(['part', 'photo']);
  last().answer(true);
  await settle();
  const [failed] = bench.tiles.failed;
  failed?.again();
  await settle();
  expect(made(last().command)).toEqual(['photo']);
  expect(last().id).toBe(first.id);
  last().answer(true);
  await settle();
  expect(bench.tiles.of(part).map(({ state }) => state)).toEqual(['kept', 'kept']);
});

test('the next tag is right while the part before is still being saved', async () => {
  const bench = await start();
  bench.photo(shot());
  expect(bench.following).toBe(148);
  expect(bench.nextTag()).toBe(true);
  await settle();
  expect(bench.tag).toBe(148);
  bench.photo(shot());
  last().answer(true);
  await settle();
  const { command } = last();
  expect(command.do === 'all' && command.commands[0]).toMatchObject({ kind: 'part', changes: [{ tag: 148 }] });
});

test('an empty tag is not passed over', async () => {
  const bench = await start();
  expect(bench.nextTag()).toBe(false);
  expect(bench.tag).toBe(147);
});

test('hardware that comes off before the part is joined to it', async () => {
  const bench = await start();
  bench.addPiece();
  bench.addPiece();
  await settle();
  expect(made(last().command)).toEqual(['joint', 'piece']);
  last().answer(true);
  await settle();
  expect(made(last().command)).toEqual(['piece']);
  last().answer(true);
  await settle();
  expect(bench.jointInHand).toMatchObject({ name: 'A', pieces: 2 });
  bench.photo(shot());
  await settle();
  expect(made(last().command)).toEqual(['part', 'photo', 'change']);
});

test('a part that was not saved before the kill begins anew under the same number', async () => {
  const first = await start();
  first.photo(shot());
  const again = await start();
  expect(again.part).toBe(first.part);
  expect(again.tag).toBe(147);
});

test('a value of a part not yet recorded makes it', async () => {
  const bench = await start();
  bench.write([{ name: 'Hub' }]);
  await settle();
  const { command } = last();
  expect(command.do === 'all' && command.commands).toMatchObject([{ do: 'create', kind: 'part', changes: [{ tag: 147 }, { name: 'Hub' }] }]);
});

test('a number that may stand on a bag already stays, also when the part before it was lost', async () => {
  const first = await start();
  first.photo(shot());
  first.nextTag();
  expect(first.tag).toBe(148);
  const again = await start();
  expect(again.tag).toBe(148);
});

test('a number that another window has given is not shown again', async () => {
  const bench = await start();
  view.now = { ...view.now, next_tag: 151 };
  await bench.refresh();
  expect(bench.tag).toBe(151);
});

test('names keep their places under the thumb while a part is in hand', async () => {
  view.now = { ...view.now, names: ['Bearing', 'Cap', 'Hub', 'Shoe'] };
  const bench = await start();
  view.now = { ...view.now, names: ['Hub', 'Bearing', 'Cap', 'Shoe'] };
  await bench.refresh();
  expect(bench.names).toEqual(['Bearing', 'Cap', 'Hub']);
  bench.photo(shot());
  bench.nextTag();
  await settle();
  expect(bench.names).toEqual(['Hub', 'Bearing', 'Cap']);
});
