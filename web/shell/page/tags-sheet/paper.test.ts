import { expect, test } from 'vitest';
import { nudgeFigure, ownFigure, sheetOf, type Paper } from './paper.ts';

const paper: Paper = {
  kind: 'own', card: 'strips-letter', right: '0', down: '0',
  own: { pageWidth: '210', pageHeight: '297', labelWidth: '70', labelHeight: '37', across: '3', down: '8', left: '0', top: '0,5', pitchX: '70', pitchY: '37' },
};

test('figures of a sheet are read as typed, and one that is none holds everything up', () => {
  expect(sheetOf(paper)).toEqual({ kind: 'own', page: [210, 297], label: [70, 37], across: 3, down: 8, left: 0, top: 0.5, pitch: [70, 37], strips: false });
  expect(sheetOf({ ...paper, own: { ...paper.own, down: '7.5' } })).toBe(null);
  expect(sheetOf({ ...paper, kind: 'strips' })).toEqual({ kind: 'strips-letter' });
  expect(ownFigure('across', '0')).toBe(null);
  expect(ownFigure('left', '-1')).toBe(null);
});

test('a printer is off by ten millimetres at most', () => {
  expect(['0', '-1.5', '\u22122', '10', '10.1', 'x', ''].map(nudgeFigure)).toEqual([0, -1.5, -2, 10, null, null, null]);
});
