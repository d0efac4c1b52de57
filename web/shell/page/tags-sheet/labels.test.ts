import { expect, test } from 'vitest';
import { SHEETS, layOut } from './labels.ts';

test('labels fill the sheet evenly from edge to edge', () => {
  for (const sheet of Object.values(SHEETS)) {
    const [labels = []] = layOut(sheet, 1, 1, 0);
    const last = labels[labels.length - 1];
    expect(labels.length).toBe(sheet.across * sheet.down);
    if (!last) throw new Error('a sheet without labels');
    expect(Math.abs(sheet.width - (last.x + sheet.label.width) - sheet.left) < 0.02, sheet.name).toBe(true);
    expect(Math.abs(sheet.height - (last.y + sheet.label.height) - sheet.top) < 0.02, sheet.name).toBe(true);
  }
});

test('used labels are left out on the first sheet alone, and numbers run on', () => {
  const [first = [], second = []] = layOut(SHEETS.a4, 147, 2, 5);
  expect(first.length).toBe(16);
  expect(second.length).toBe(21);
  expect(first[0]?.number).toBe(147);
  expect(second[0]?.number).toBe(163);
  expect(first[0]?.x).toBe(SHEETS.a4.left + 2 * SHEETS.a4.pitch.x);
});

test('at least one label of the first sheet is left', () => {
  expect(layOut(SHEETS.letter, 1, 1, 99)[0]?.length).toBe(1);
});
