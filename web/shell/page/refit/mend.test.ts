import { beforeEach, expect, test, vi } from 'vitest';
import type { Command, Lack, LackWhy, Query, RecordView, RefitStepView, Values, View } from '../../bridge/protocol';

const sent: Command[] = [];
const world: { ok: boolean; answer: (query: Query) => unknown } = { ok: true, answer: () => ({ view: 'nothing' }) };
let ids = 0;

vi.mock('../../bridge/desk', () => ({
  newId: () => `id-${++ids}`,
  desk: { ask: (query: Query) => Promise.resolve(world.answer(query) as View) },
}));
vi.mock('../carry-out', () => ({ carryOut: (command: Command) => { sent.push(command); return Promise.resolve({ ok: world.ok, problems: [] }); } }));
vi.mock('../today', () => ({ today: () => '2026-03-01' }));

const { coming, toCompare, waysOf } = await import('./mend.ts');

const record = (id: string, values: Values = {}): RecordView => ({ id, kind: 'delivery', values, struck: false, seen: {}, conflicts: [] }) as unknown as RecordView;
const view = (more: Partial<RefitStepView> = {}): RefitStepView =>
  ({ record: record('hub'), step: { line: { id: 'hub', name: 'Hub' }, state: 'waiting', brings_new: true }, deliveries: [], outings: [], joints: [], consumables: [], ...more }) as unknown as RefitStepView;
const lack = (why: LackWhy, more: Partial<Lack> = {}): Lack => ({ why, name: 'Hub', own: false, no_date: false, overdue: false, ...more });
const ways = (one: Lack, at = view()) => waysOf(one, at, () => undefined);

beforeEach(() => {
  sent.length = 0;
  world.ok = true;
  world.answer = () => ({ view: 'nothing' });
});

// Break: take every delivery that is on its way.
test('"In today" is said of the one delivery that is meant', async () => {
  const deliveries = [record('one', { due: '2026-02-20' }), record('two', { due: '2026-04-01' }), record('three', { arrived: '2026-02-01' })];
  const [inNow] = ways(lack('on-order', { other: 'one' }), view({ deliveries }));
  expect(await inNow?.mend?.()).toBe(true);
  expect(sent).toEqual([{ do: 'all', commands: [{ do: 'change', ids: ['one'], changes: [{ arrived: '2026-03-01' }], seen: { arrived: [] } }] }]);
  expect(coming(deliveries).map(({ id }) => id)).toEqual(['one', 'two']);
});

test('what is no longer on its way is not said to be in, and that is told', async () => {
  const [inNow] = ways(lack('on-order', { other: 'gone' }), view({ deliveries: [record('two', {})] }));
  expect(await inNow?.mend?.()).toEqual({ why: expect.stringContaining('changed meanwhile') });
  expect(sent).toEqual([]);
});

// Break: compare all that came back, not the last.
test('compared is what came in and was not yet: new pieces, else the part from its last work', () => {
  const deliveries = [record('in', { arrived: '2026-02-01' }), record('right', { arrived: '2026-02-02', compared: 'right' }), record('way', {})];
  const outings = [record('late', { arrived: '2026-02-09' }), record('early', { arrived: '2026-01-09' }), record('loan', { arrived: '2026-02-20', out_for: 'loan' })];
  expect(toCompare(view({ deliveries, outings })).map(({ id }) => id)).toEqual(['in']);
  const own = { ...view().step, brings_new: false };
  expect(toCompare(view({ step: own, deliveries, outings })).map(({ id }) => id)).toEqual(['late']);
  expect(toCompare(view({ step: own, outings: [record('late', { arrived: '2026-02-09', compared: 'right' }), record('early', { arrived: '2026-01-09' })] }))).toEqual([]);
});

test('use again is a quote and its choice with one stroke; refused, it may be tried again', async () => {
  const [use] = ways(lack('undecided'));
  world.ok = false;
  expect(await use?.mend?.()).toBe(false);
  const [all] = sent;
  expect(all?.do === 'all' && all.commands.map((one) => one.do)).toEqual(['create', 'choose']);
  expect(all?.do === 'all' && all.commands[0]?.do === 'create' && all.commands[1]?.do === 'choose' && all.commands[0].id === all.commands[1].quote).toBe(true);
});

// Break: answer with nothing where there is no quote, or no vehicle.
test('where there is nothing to say it of, it is told why', async () => {
  const [fetched] = ways(lack('to-fetch'));
  expect(await fetched?.mend?.()).toEqual({ why: expect.stringContaining('No route is chosen') });
  const [painted] = ways(lack('paint'));
  expect(await painted?.mend?.()).toEqual({ why: expect.stringContaining('Name the vehicle') });
  expect(sent).toEqual([]);
});

test('the vehicle being done is painted, not the donor', async () => {
  world.answer = () => ({ view: 'head', vehicles: [record('donor', { donor: true }), record('car', { name: 'Saloon' })] });
  const [painted] = ways(lack('paint'));
  expect(await painted?.mend?.()).toBe(true);
  expect(sent).toMatchObject([{ commands: [{ ids: ['car'], changes: [{ painted: true }] }] }]);
});

test('hardware that is here is here in full; what a lack waits for is a way to go', async () => {
  const joints = [{ pieces: [{ record: record('pin', { quantity: 4, name: 'Split pin' }) }] }] as unknown as RefitStepView['joints'];
  const [here] = ways(lack('hardware', { other: 'pin', pieces: 2 }), view({ joints }));
  await here?.mend?.();
  expect(sent).toMatchObject([{ commands: [{ ids: ['pin'], changes: [{ in_hand: 4 }] }] }]);
  expect(ways(lack('goes-after', { other: 'axle', other_name: 'Axle' }))[0]?.href).toBe('#/refit/axle');
  expect(ways(lack('circle'))).toEqual([]);
  expect(ways(lack('missing'))[0]?.href).toBe('#/part/hub?from=refit%2Fnone%3Fstep%3Dhub');
});
