import { expect, test } from 'vitest';
import type { SupplierLine } from '../../bridge/protocol';
import { readTerms } from './terms-table';

const line = (id: string, name: string): SupplierLine => ({ record: { id, kind: 'supplier', values: { name }, struck: false, seen: {}, conflicts: [] }, tiers: [], quotes: 0 });

test('heads name the columns; a known name is changed, another is new', () => {
  const { rows, unread, nameless } = readTerms('Supplier\tPostage\tFree from\tLead time\tVAT %\tColour\nsloe hill  spares\t£6.50\t£150\t7 days\t20%\tred\nAnvil Row\t\t\t21\t\t', [line('a', 'Sloe Hill Spares')], 'GBP');
  expect([nameless, unread]).toEqual([false, ['Colour']]);
  expect(rows.map((row) => ({ ...row, known: row.known?.id }))).toEqual([
    { name: 'sloe hill  spares', known: 'a', changes: [{ shipping: { minor: 650, currency: 'GBP' } }, { free_from: { minor: 15000, currency: 'GBP' } }, { wait: 7 }, { tax_rate: 2000 }], wrong: [] },
    { name: 'Anvil Row', known: undefined, changes: [{ wait: 21 }], wrong: [] },
  ]);
});

test('what cannot be read is told beside its column, and the rest of the row stands', () => {
  const { rows } = readTerms('Name;Minimum order;Minimum charge;Warranty\nLower Wick;ten;75;12', [], 'GBP');
  expect(rows[0]?.changes).toEqual([{ minimum_charge: { minor: 7500, currency: 'GBP' } }, { warranty: 12 }]);
  expect(rows[0]?.wrong.map(({ column }) => column)).toEqual(['Least order']);
});

test('without a column of names nothing is read; a name that comes twice goes to its first row', () => {
  expect(readTerms('Postage;Free from\n5;50', [], 'GBP').nameless).toBe(true);
  expect(readTerms('Name;Postage\nA;5\na;6', [], 'GBP').rows.map(({ name }) => name)).toEqual(['A']);
  expect(readTerms('', [], 'GBP').rows).toEqual([]);
});
