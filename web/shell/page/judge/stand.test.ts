import { describe, expect, test } from 'vitest';
import type { AskedView, InspectView } from '../../bridge/protocol';
import { after, open, standAt } from './stand';

const asked = (question: string, answer?: string, skipped = false): AskedView => ({ question, outcomes: [], skipped, photos: [], ...(answer && { answer }) });
const view = (all: AskedView[], family?: string): InspectView => {
  const next = all.findIndex(({ answer, skipped }) => answer === undefined && !skipped);
  return {
    part: 'p', proposed: [], own_families: [], single_use: false, pair: false, matched: false, safety_critical: false, asked: all, measures: [], verdict: 'not-known', reasons: [], routes: [],
    keep_as_pattern: false, together: [], instruments: [], usual_instruments: [], ...(family !== undefined && { family }), ...(next >= 0 && { next }),
  };
};

describe('where an address leads', () => {
  const half = view([asked('spalls', 'none'), asked('dents'), asked('cage')], 'rolling-bearing');

  test('to the family while none is said, whatever it names', () => {
    expect(standAt(view([]), 'result')).toEqual({ is: 'family' });
  });

  // A word that an older version took for a family, or one of the user's own that has not arrived yet.
  test('to the family where the one that is said is not known', () => {
    expect(standAt(view([], 'thing'), null)).toEqual({ is: 'family' });
  });

  test('to the first open question when it names none, or none that is asked', () => {
    expect(standAt(half, null)).toEqual({ is: 'question', index: 1 });
    expect(standAt(half, 'gone')).toEqual({ is: 'question', index: 1 });
  });

  test('to the question it names, also when that has its answer', () => {
    expect(standAt(half, 'spalls')).toEqual({ is: 'question', index: 0 });
  });

  test('to the result once nothing is open', () => {
    expect(standAt(view([asked('spalls', 'none'), asked('dents', undefined, true)], 'rolling-bearing'), null)).toEqual({ is: 'result' });
  });
});

describe('after a question comes', () => {
  test('the next that is open, past those that have their answer', () => {
    expect(after(view([asked('a'), asked('b', 'none'), asked('c')]), 0)).toBe('c');
  });

  test('one before it that is still open', () => {
    expect(after(view([asked('a'), asked('b'), asked('c', 'none')]), 1)).toBe('a');
  });

  test('the result', () => {
    expect(after(view([asked('a', 'none'), asked('b')]), 1)).toBe('result');
  });
});

test('what was skipped is not open, and not looked at either', () => {
  expect(open(view([asked('a', 'none'), asked('b', undefined, true), asked('c')]))).toBe(1);
});
