import { expect, test } from 'vitest';
import type { PartLine, QuoteCost } from '../../bridge/protocol';
import { commandOf, planOf, type Known } from './plan';
import { readDay, readDecimal, readSum, readTable } from './table';

test.each([
  ['\t', 'Tag\tPrice\tSupplier\n0012\t18.50\tHare & Wick'],
  [';', 'Tag;Price;Supplier\n0012;18,50;Hare & Wick'],
  [',', 'Tag,Price,Supplier\n0012,"18.50","Hare & Wick"'],
])('cells between %j are told apart, and the heads guessed', (_, text) => {
  const table = readTable(text);
  expect(table.columns).toEqual(['tag', 'cash', 'from']);
  expect(table.header).toBe(true);
  expect(table.rows[1]?.[2]).toBe('Hare & Wick');
});

test('the sign for decimals is guessed from what the cells show', () => {
  expect(readTable('a;1.980,50\nb;3,5').decimal).toBe(',');
  expect(readTable('a\t1,980.50\nb\t12.00').decimal).toBe('.');
});

test('sums are read by their digits', () => {
  expect(readSum('£1,980.50', '.', 'GBP')).toEqual({ minor: 198_050, currency: 'GBP' });
  expect(readSum('1.980,50 €', ',', 'EUR')).toEqual({ minor: 198_050, currency: 'EUR' });
  expect(readSum('1 980,5', ',', 'EUR')).toEqual({ minor: 198_050, currency: 'EUR' });
  expect(readSum('18.355', '.', 'GBP')).toBeNull();
  expect(readSum('on request', '.', 'GBP')).toBeNull();
  expect(readDecimal('12,5 %', ',')).toBe(12.5);
});

test('days are read as they are written, those that are none are not', () => {
  expect(readDay('2026-05-01')).toBe('2026-05-01');
  expect(readDay('1.5.2026')).toBe('2026-05-01');
  expect(readDay('31/02/2026')).toBeNull();
});

const part = (id: string, tag: number, name: string): PartLine => ({ id, tag, name, quantity: 1, assembly_name: '', place: [], standing: 'off', irreplaceable: false, missing: false, wrong_piece: false, stuck: false, struck: false, photos: 0, found: [] });
const old = { id: 'q', route: 'buy', record: { id: 'q', values: { from: 'Hare & Wick' }, seen: { cash: ['e'] } } } as unknown as QuoteCost;
const known: Known = { parts: [part('p', 12, 'Hub'), part('r', 13, 'Seal')], quotes: (id) => (id === 'p' ? [old] : []), currency: 'GBP' };

test('rows find their parts, change what is there, and say why they are left out', () => {
  const rows = planOf(readTable('tag;part;route;supplier;price;hours\n0012;;;Hare & Wick;20.00;\n;seal;Send out;Tinfold;8.00;0:30\n;Gaiter;;;3.10;\n99;;;;4.00;\n12;;Borrow;;1.00;\n13;;;;dear;'), known);
  expect(rows.map(({ problem }) => Boolean(problem))).toEqual([false, false, false, true, true, true]);
  expect(rows[0]?.quote?.id).toBe('q');
  expect(rows[1]).toMatchObject({ part: { id: 'r' }, route: 'send-out', quote: null });
  let n = 0;
  const command = commandOf(rows, () => '', () => `n${++n}`);
  expect(command).toEqual({ do: 'all', commands: [
    { do: 'change', ids: ['q'], changes: [{ cash: { minor: 2000, currency: 'GBP' } }, { cash_certainty: 'sure' }], seen: { cash: ['e'] } },
    { do: 'create', id: 'n1', kind: 'quote', changes: [{ of: 'r' }, { route: 'send-out' }, { cash: { minor: 800, currency: 'GBP' } }, { own_time: 30 }, { cash_certainty: 'sure' }] },
    { do: 'create', id: 'n2', kind: 'part', changes: [{ name: 'Gaiter' }, { from_boxes: true }] },
    { do: 'create', id: 'n3', kind: 'quote', changes: [{ of: 'n2' }, { route: 'buy' }, { cash: { minor: 310, currency: 'GBP' } }, { cash_certainty: 'sure' }] },
  ] });
});

test('rows of one new part share it', () => {
  const rows = planOf(readTable('part;supplier;price\nGaiter;A;3.10\ngaiter;B;2.90'), known);
  const command = commandOf(rows, () => '', (() => { let n = 0; return () => `n${++n}`; })());
  expect(command.do === 'all' && command.commands.filter((one) => one.do === 'create' && one.kind === 'part')).toHaveLength(1);
});
