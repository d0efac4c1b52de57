import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Series } from './series.ts';

const page = Object.assign(new EventTarget(), { hidden: false });

beforeEach(() => {
  vi.useFakeTimers();
  page.hidden = false;
  vi.stubGlobal('document', page);
});

afterEach(() => { vi.useRealTimers(); });

test('a picture every so many seconds until it is stopped', () => {
  let taken = 0;
  const series = new Series(() => { taken += 1; });
  series.start(3);
  expect(series.left).toBe(3);
  vi.advanceTimersByTime(9_000);
  expect(taken).toBe(3);
  series.stop();
  vi.advanceTimersByTime(9_000);
  expect(taken).toBe(3);
  expect(series.left).toBeNull();
});

test('a hidden page stops it', () => {
  let taken = 0;
  const series = new Series(() => { taken += 1; });
  series.start(3);
  page.hidden = true;
  page.dispatchEvent(new Event('visibilitychange'));
  vi.advanceTimersByTime(9_000);
  expect(taken).toBe(0);
  expect(series.left).toBeNull();
});
