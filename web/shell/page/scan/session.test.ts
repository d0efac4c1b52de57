import { beforeEach, expect, test, vi } from 'vitest';
import type { Command, CountView, PlaceLine, Query, StoredLine, View } from '../../bridge/protocol';

const sent: Command[] = [];
const world: { ok: boolean; answer: (query: Query) => unknown } = { ok: true, answer: () => ({ view: 'nothing' }) };
let ids = 0;

vi.mock('../../bridge/desk', () => ({
  newId: () => `id-${++ids}`,
  desk: { ask: (query: Query) => Promise.resolve(world.answer(query) as View) },
}));
vi.mock('../carry-out', () => ({
  carryOut: (command: Command) => {
    sent.push(command);
    return Promise.resolve({ ok: world.ok, problems: [], ...(world.ok && { entry: `e${sent.length}` }) });
  },
}));

const { Session } = await import('./session.ts');

const part = (id: string, tag: number, name: string, place?: string): StoredLine =>
  ({ line: { id, tag, name, place: place ? ['Garage', place] : [] }, lies: place ? 'place' : 'nowhere', ...(place && { place }), care: {}, settled: false, awkward: [] }) as unknown as StoredLine;
const place = (id: string, name: string): PlaceLine => ({ record: { id, values: { name } }, path: [name], parts: 0, parts_within: 0 }) as unknown as PlaceLine;

const hub = part('hub', 147, 'Hub', 'Box 11');
const cap = part('cap', 151, 'Grease cap');
const box = place('box', 'Box 07');
const shelf = place('shelf', 'Shelf 2');
/** What carries which code. */
const carriers: Record<string, { parts?: StoredLine[]; places?: PlaceLine[] }> = {
  '01472': { parts: [hub] }, '01518': { parts: [cap] }, '04939': { places: [box] }, '04920': { places: [shelf] }, '00990': { parts: [hub, cap] }, '04003': {},
};

beforeEach(() => {
  sent.length = 0;
  world.ok = true;
  world.answer = (query) => {
    if (query.ask === 'place') return { view: 'place', line: query.place === 'box' ? box : shelf, way: query.place === 'box' ? [{ id: 'shelf' }, { id: 'box' }] : [{ id: 'shelf' }] };
    if (query.ask !== 'tag') return { view: 'nothing' };
    const found = carriers[query.text.replace('-', '')];
    if (!found) return { view: 'tag', read: { read: query.text.includes('x') ? 'wrong-check' : 'not-ours' }, parts: [], places: [] };
    const isNumber = query.text.length < 5;
    return { view: 'tag', read: { read: isNumber ? 'number' : 'code', number: 147 }, number: 147, code: query.text, parts: found.parts ?? [], places: found.places ?? [] };
  };
});

test('a tag opens what carries it', async () => {
  const session = new Session('open');
  const went: string[] = [];
  session.addEventListener('go', (event) => { went.push(String((event as CustomEvent<string>).detail)); });
  await session.scanned(['01472']);
  await session.scanned(['04939']);
  expect(went).toEqual(['#/part/hub', '#/stores/box']);
  expect(sent).toEqual([]);
});

test('parts, then the place; read in one frame in whatever order', async () => {
  const session = new Session('move');
  await session.scanned(['01472']);
  await session.scanned(['01472']);
  expect(session.hand).toHaveLength(1);
  await session.scanned(['04939', '01518']);
  expect(sent).toEqual([{ do: 'all', commands: [{ do: 'change', ids: ['hub'], changes: [{ place: 'box' }] }, { do: 'change', ids: ['cap'], changes: [{ place: 'box' }] }] }]);
  expect(session.hand).toEqual([]);
  expect(session.last?.entry).toBe('e1');
  await session.undo();
  expect(sent[1]).toEqual({ do: 'undo', entry: 'e1' });
  expect(session.last).toBeNull();
});

test('a box is moved like a part, but not into itself', async () => {
  const session = new Session('move');
  await session.scanned(['04920']);
  await session.scanned(['04939']);
  expect(session.sign?.state).toBe('wrong');
  expect(sent).toEqual([]);
  session.putDown();
  await session.scanned(['04939']);
  await session.scanned(['04920']);
  expect(sent).toEqual([{ do: 'all', commands: [{ do: 'change', ids: ['box'], changes: [{ within: 'shelf' }] }] }]);
});

test('what was out of the house is in again where it is laid', async () => {
  const session = new Session('move');
  carriers['00880'] = { parts: [{ ...part('damper', 88, 'Damper'), lies: 'out', out: { id: 'outing' } as never }] };
  await session.scanned(['00880', '04939']);
  const [all] = sent;
  expect(all?.do === 'all' && all.commands.map((one) => (one.do === 'change' ? [one.ids[0], Object.keys(one.changes[0] ?? {})[0]] : []))).toEqual([['outing', 'arrived'], ['damper', 'place']]);
});

test('nothing is said to be done that was not stored', async () => {
  const session = new Session('move');
  world.ok = false;
  await session.scanned(['01472', '04939']);
  expect(session.sign?.state).toBe('wrong');
  expect(session.hand).toHaveLength(1);
  expect(session.last).toBeNull();
});

test('a number without its check character is asked about; a wrong one is refused', async () => {
  const session = new Session('move');
  carriers['147'] = { parts: [hub] };
  await session.typed('147');
  expect(session.sign?.asked?.ask).toBe('sure');
  expect(session.hand).toEqual([]);
  if (session.sign?.asked?.ask === 'sure') await session.answer(session.sign.asked.thing);
  expect(session.hand).toHaveLength(1);
  await session.typed('0147x');
  expect(session.sign?.state).toBe('wrong');
});

test('two carriers are told apart by the person, an unknown tag is given to somebody', async () => {
  const session = new Session('open');
  await session.scanned(['00990']);
  expect(session.sign?.asked?.ask).toBe('which');
  await session.scanned(['04003']);
  expect(session.sign?.asked?.ask).toBe('unknown');
  await session.make('part', 400, '0400-3');
  expect(sent).toEqual([{ do: 'create', id: `id-${ids}`, kind: 'part', changes: [{ tag: 400 }] }]);
  await session.give('cap', 'Grease cap', 400, '0400-3');
  expect(sent[1]).toEqual({ do: 'change', ids: ['cap'], changes: [{ tag: 400 }] });
});

test('a count takes each tag once, and tells what is foreign', async () => {
  const session = new Session('count');
  const count = { view: 'count', record: { id: 'count', struck: false }, place: box, sums: {}, lines: [{ ...cap, counted: 'missing' }], places: [] } as unknown as CountView;
  const answer = world.answer;
  world.answer = (query) => (query.ask === 'count' ? count : answer(query));
  await session.scanned(['01518']);
  expect(session.sign?.state).toBe('wrong');
  await session.scanned(['04939']);
  expect(sent[0]).toMatchObject({ do: 'create', kind: 'count' });
  await session.scanned(['01518']);
  expect(sent[1]).toMatchObject({ kind: 'sighting', changes: [{ of: 'cap' }, { place: 'box' }, { in_count: 'count' }, {}] });
  expect(session.sign?.state).toBe('done');
  await session.scanned(['01472']);
  expect(session.sign?.state).toBe('amiss');
  count.lines = [{ ...hub, counted: 'foreign', sighting: 's' }];
  await session.refresh();
  await session.scanned(['01472']);
  expect(sent).toHaveLength(3);
});

// Break: empty the whole hand in `undo`.
test('what has nothing to do with what was taken back stays in hand', async () => {
  const session = new Session('move');
  await session.scanned(['01472', '04939']);
  await session.scanned(['01518']);
  await session.undo();
  expect(sent[1]).toEqual({ do: 'undo', entry: 'e1' });
  expect(session.hand.map((thing) => thing.kind === 'part' && thing.part.line.id)).toEqual(['cap']);
});

// Break: take it in hand.
test('what is on for good is not laid anywhere; the old piece beside a new one is', async () => {
  const session = new Session('move');
  const on = { ...part('axle', 3, 'Stub axle'), lies: 'refitted' } as StoredLine;
  carriers['00035'] = { parts: [on] };
  carriers['00043'] = { parts: [{ ...on, line: { ...on.line, id: 'old', route: 'buy' } }] };
  await session.scanned(['00035']);
  expect([session.sign?.state, session.sign?.tag, session.sign?.said]).toEqual(['wrong', '0003', 'Stub axle is refitted']);
  expect(session.hand).toEqual([]);
  await session.scanned(['00043']);
  expect(session.hand).toHaveLength(1);
});

// Break: leave `hand` as it was in `undo`.
test('what was just made and taken back is no longer in hand', async () => {
  const session = new Session('move');
  await session.scanned(['04003']);
  const answer = world.answer;
  world.answer = (query) => (query.ask === 'tag' && query.text === '0400-3' ? { view: 'tag', read: { read: 'code', number: 400 }, number: 400, code: '0400-3', parts: [part(`id-${ids}`, 400, '')], places: [] } : answer(query));
  await session.make('part', 400, '0400-3');
  expect(session.hand).toHaveLength(1);
  await session.undo();
  expect(session.hand).toEqual([]);
  sent.length = 0;
  await session.scanned(['04939']);
  // Nothing is laid: the box is taken up.
  expect(sent).toEqual([]);
});

// Break: empty the hand whether it was taken back or not.
test('what could not be taken back is still in hand', async () => {
  const session = new Session('move');
  await session.scanned(['01472', '04939', '01518']);
  expect(session.last).not.toBeNull();
  await session.scanned(['01518']);
  const held = session.hand.length;
  expect(held).toBeGreaterThan(0);
  world.ok = false;
  await session.undo();
  expect(session.hand).toHaveLength(held);
  expect(session.sign?.state).toBe('wrong');
});

// Break: open each tag that is read.
test('two tags in one frame: the person says which one is opened', async () => {
  const session = new Session('open');
  const went: string[] = [];
  session.addEventListener('go', (event) => { went.push(String((event as CustomEvent<string>).detail)); });
  await session.scanned(['01472', '04939']);
  expect(went).toEqual([]);
  const asked = session.sign?.asked;
  expect(asked?.ask === 'which' && asked.things.map((thing) => thing.kind)).toEqual(['part', 'place']);
  if (asked?.ask === 'which' && asked.things[1]) await session.answer(asked.things[1]);
  expect(went).toEqual(['#/stores/box']);
});

test('what is no tag beside one that is does not keep it from being opened', async () => {
  const session = new Session('open');
  const went: string[] = [];
  session.addEventListener('go', (event) => { went.push(String((event as CustomEvent<string>).detail)); });
  await session.scanned(['elsewhere', '01472']);
  expect(went).toEqual(['#/part/hub']);
});

// Break: say large what was to be done.
test('the sign says large that it is not stored, and small what', async () => {
  const session = new Session('move');
  await session.scanned(['01472']);
  world.ok = false;
  await session.scanned(['04939']);
  expect([session.sign?.said, session.sign?.todo]).toEqual(['Not stored', 'Hub laid in Box 07']);
});

test('a wrong code is shown as it was typed', async () => {
  const session = new Session('open');
  await session.typed('0147x');
  expect(session.sign?.said).toBe('Not a right code: 0147x');
});
