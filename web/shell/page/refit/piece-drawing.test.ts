import { expect, test } from 'vitest';
import { pieceShape } from './piece-drawing.ts';

test('a piece is drawn as its name says, in British and American words', () => {
  const names: [string, string][] = [['Split pin 1/8', 'split-pin'], ['Cotter pins', 'split-pin'], ['Circlip', 'circlip'], ['Snap ring', 'circlip'], ['Castle nut', 'castle-nut'], ['Nylon lock nut', 'lock-nut'], ['Nuts', 'nut'], ['Thrust washer', 'tab-washer'], ['Spring washers', 'spring-washer'], ['Copper washer', 'washer'], ['Bolt M8 × 25', 'bolt'], ['O-ring', 'seal'], ['Grease seal', 'seal'], ['Clevis pin', 'pin'], ['Cotter nut', 'nut'], ['King pin cotter', 'pin']];
  for (const [name, shape] of names) expect(pieceShape(name), name).toBe(shape);
});

test('a word within another one is not taken for it', () => {
  expect(pieceShape('Pinion')).toBe('plate');
  expect(pieceShape('Nutcracker plate')).toBe('plate');
  expect(pieceShape('')).toBe('plate');
});
