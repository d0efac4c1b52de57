import { expect, test } from 'vitest';
import type { RecordView } from '../../bridge/protocol';
import { markAt, markDrawn, moved, resized, turned } from './mark-shape';
import { cover } from './marks-layer';
import { reordered } from './reordered';

test('a tapped ring is round on the picture; a drawn one reaches to where it was drawn', () => {
  const ring = markAt('ring', 5000, 5000, 4 / 3);
  expect(ring.dx * 4).toBe(ring.dy * 3);
  expect(markDrawn('ring', [1000, 1000], [1800, 400])).toMatchObject({ x: 1000, y: 1000, dx: 800, dy: 600 });
});

test('an arrow is drawn from its tail to its tip', () => {
  expect(markDrawn('arrow', [1000, 1000], [1800, 400])).toMatchObject({ x: 1800, y: 400, dx: -800, dy: 600 });
});

test('moved marks stay on the picture; sizes keep their sign', () => {
  expect(moved(markAt('ring', 100, 100, 1), [-500, 0]).x).toBe(0);
  expect(resized({ shape: 'arrow', x: 0, y: 0, dx: -1000, dy: 500 }, 2)).toMatchObject({ dx: -2000, dy: 1000 });
});

test('four quarter turns bring an arrow back', () => {
  const arrow = { shape: 'arrow', x: 0, y: 0, dx: 1200, dy: 900 } as const;
  const back = [1, 2, 3, 4].reduce((mark) => turned(mark, 4 / 3), arrow as ReturnType<typeof markAt>);
  expect(back).toEqual(arrow);
});

test('a picture covers its box', () => {
  expect(cover([400, 200], [100, 100])).toEqual({ left: 0, top: -100, width: 400, height: 400 });
});

test('moving one photo writes only those whose number changes', () => {
  const record = (id: string, order: number): RecordView => ({ id, kind: 'photo', values: { order }, struck: false, seen: {}, conflicts: [] });
  const all = [record('a', 1), record('b', 2), record('c', 3)];
  expect(reordered(all, 1, 0)).toEqual([{ do: 'change', ids: ['b'], changes: [{ order: 1 }] }, { do: 'change', ids: ['a'], changes: [{ order: 2 }] }]);
});
