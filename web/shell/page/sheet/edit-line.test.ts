import { expect, test } from 'vitest';
import type { RecordView } from '../../bridge/protocol';
import { EditLine } from './edit-line.ts';

const record = (entry: string): RecordView =>
  ({ id: 'a', kind: 'part', values: {}, struck: false, seen: { name: [entry] }, conflicts: [] });

// Catches: saving over the record as it stands at saving, which would overwrite a value nobody saw.
test('a line is put down over what was on the screen when it was opened', async () => {
  const line = new EditLine();
  const saved: (RecordView | undefined)[] = [];
  Object.assign(line, { value: 'Hub', record: record('first'), save: (_: string, over?: RecordView) => { saved.push(over); return Promise.resolve(''); } });
  const inside = line as unknown as { start: () => void; text: string; put: (withFocus: boolean) => Promise<void> };
  inside.start();
  line.record = record('second');
  inside.text = 'Front hub';
  await inside.put(false);
  expect(saved.map((over) => over?.seen.name)).toEqual([['first']]);
});

// Catches: a day of which only the month was typed reads as empty, and would empty what stands.
test('half a day is not put down', async () => {
  const line = new EditLine();
  const saved: string[] = [];
  Object.assign(line, { value: '2027-04-01', kind: 'day', save: (text: string) => { saved.push(text); return Promise.resolve(''); } });
  const inside = line as unknown as { start: () => void; text: string; isHalf: boolean; wrong: string; put: (withFocus: boolean) => Promise<void> };
  inside.start();
  Object.assign(inside, { text: '', isHalf: true });
  await inside.put(false);
  expect(saved).toEqual([]);
  expect(inside.wrong).toBeTruthy();
});
