import { beforeEach, expect, test, vi } from 'vitest';
import type { Command, TeardownView } from '../../bridge/protocol';

/** A desk that remembers what was asked of it and answers when it is told to. */
const sent: { command: Command; id: string | undefined; answer: (ok: boolean) => void }[] = [];
const view: { job: string; now: TeardownView } = { job: 'job', now: { open: [], next_tag: 147, names: [], places: [], joints: [], parts: [] } };
let ids = 0;

vi.mock('../../bridge/desk', () => ({
  newId: () => `id-${++ids}`,
  desk: {
    current: () => view.job,
    ask: () => Promise.resolve({ view: 'teardown', ...view.now }),
    command: (command: Command, _beside: unknown, id?: string) => new Promise((resolve) => {
      sent.push({ command, id, answer: (ok) => { resolve({ ok, problems: [] }); } });
    }),
  },
}));

const { Bench, benchOf } = await import('./bench.ts');
const { SpokenNotes } = await import('./spoken-notes.ts');
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
  view.job = 'job';
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

test('a closed joint is left as it is: the next piece begins another', async () => {
  const bench = await start();
  bench.photo(shot());
  await settle();
  last().answer(true);
  await settle();
  bench.addPiece();
  await settle();
  const joint = bench.jointInHand?.id ?? 'none';
  bench.closeJoint();
  expect(bench.jointInHand).toBeNull();
  expect(bench.nextJointName).toBe('B');
  last().answer(true);
  await settle();
  bench.addPiece();
  await settle();
  expect(last().command).toMatchObject({ commands: [{ kind: 'joint', changes: [{ name: 'B' }] }, { kind: 'piece' }] });
  expect(JSON.stringify(last().command)).not.toContain(joint);
  bench.addPiece();
  expect(bench.jointInHand).toMatchObject({ name: 'B', pieces: 2 });
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
  expect(bench.names).toEqual(['Bearing', 'Cap']);
  bench.photo(shot());
  bench.nextTag();
  await settle();
  expect(bench.names).toEqual(['Hub', 'Bearing']);
});

test('a part keeps its own number and assembly, however late it is saved', async () => {
  const bench = await start();
  bench.photo(shot());
  await settle();
  bench.nextTag();
  bench.photo(shot());
  const second = bench.part;
  bench.nextTag();
  await bench.take('gearbox');
  last().answer(false);
  await settle();
  expect(last().command).toMatchObject({ commands: [{ id: second, kind: 'part', changes: [{ tag: 148 }] }, { kind: 'photo' }] });
  last().answer(true);
  await settle();
  bench.tiles.failed[0]?.again();
  await settle();
  expect(last().command).toMatchObject({ commands: [{ kind: 'part', changes: [{ tag: 147 }] }, { kind: 'photo' }] });
});

test('hardware that comes off while its part is being saved is joined to it', async () => {
  const bench = await start();
  const part = bench.part;
  bench.photo(shot());
  bench.addPiece();
  await settle();
  last().answer(true);
  await settle();
  expect(last().command).toMatchObject({ commands: [{ kind: 'joint', changes: [{ name: 'A' }, { of: part }] }, { kind: 'piece' }] });
});

test('what is not saved outlives the screen', async () => {
  const bench = benchOf('kept');
  view.job = 'kept';
  await bench.refresh();
  bench.photo(shot());
  await settle();
  last().answer(false);
  await settle();
  expect(benchOf('other').tiles.failed).toHaveLength(0);
  expect(benchOf('kept').tiles.failed).toHaveLength(1);
});

test('nothing is saved into another job than its own', async () => {
  const bench = await start();
  bench.photo(shot());
  bench.photo(shot());
  await settle();
  view.job = 'other';
  last().answer(true);
  await settle();
  expect(sent).toHaveLength(1);
  expect(bench.tiles.failed).toHaveLength(1);
});

test('a spoken note stays with its part, and what is not stored of it is tried again', async () => {
  const bench = await start();
  const part = bench.part;
  const notes = new SpokenNotes(bench);
  const note = notes.begin() ?? '';
  const slice = (order: number) => ({ note, order, lasts: 3000, media_type: 'audio/webm', bytes: Promise.resolve(new ArrayBuffer(2)) });
  bench.photo(shot());
  bench.nextTag();
  notes.keep(slice(1));
  await settle();
  last().answer(true);
  await settle();
  expect(last().command).toMatchObject({ commands: [{ kind: 'note', changes: [{ of: part }, {}] }, { kind: 'slice' }] });
  last().answer(false);
  await settle();
  notes.keep(slice(2));
  await settle();
  expect(made(last().command)).toEqual(['note', 'slice']);
  last().answer(true);
  await settle();
  expect(notes.safe).toBe(1);
  bench.tiles.failed[0]?.again();
  await settle();
  expect(made(last().command)).toEqual(['slice']);
  last().answer(true);
  await settle();
  expect(notes.safe).toBe(2);
  expect(bench.tiles.failed).toHaveLength(0);
});
