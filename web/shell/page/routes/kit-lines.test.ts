import { expect, test } from 'vitest';
import { readLines } from './kit-lines';

test('a table with heads is read by them', () => {
  expect(readLines('Part no.\tDescription\tQty\nGHS 123\tHub seal\t2\n\tGasket\t1')).toEqual([
    { number: 'GHS 123', name: 'Hub seal', quantity: 2 }, { number: '', name: 'Gasket', quantity: 1 },
  ]);
});

test('a table without heads is read by what its cells look like', () => {
  expect(readLines('2\tHub seal\tGHS123\n4\tNut M8\t')).toEqual([{ number: 'GHS123', name: 'Hub seal', quantity: 2 }, { number: '', name: 'Nut M8', quantity: 4 }]);
  expect(readLines('GHS 123;Hub seal;2')).toEqual([{ number: 'GHS 123', name: 'Hub seal', quantity: 2 }]);
});

test('lines as people write them', () => {
  expect(readLines('2 x Hub seal GHS123\nGasket (4)\nBush x2\n3 Shims\nKing pin')).toEqual([
    { number: 'GHS123', name: 'Hub seal', quantity: 2 }, { number: '', name: 'Gasket', quantity: 4 }, { number: '', name: 'Bush', quantity: 2 }, { number: '', name: 'Shims', quantity: 3 }, { number: '', name: 'King pin' },
  ]);
  expect(readLines('2  Hub seal  GHS 123')).toEqual([{ number: 'GHS 123', name: 'Hub seal', quantity: 2 }]);
});

test('nothing is nothing', () => {
  expect(readLines('')).toEqual([]);
  expect(readLines('\n \n')).toEqual([]);
});
