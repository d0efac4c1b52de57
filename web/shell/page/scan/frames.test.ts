import { afterEach, beforeEach, expect, test, vi } from 'vitest';

const world = { fails: true, asked: 0, dialog: false };

vi.mock('../../bridge/desk', () => ({
  desk: { readFrame: () => { world.asked += 1; return world.fails ? Promise.reject(new Error('no worker')) : Promise.resolve(['01472']); } },
}));

const pen = { drawImage: () => undefined, getImageData: () => ({ data: { buffer: new ArrayBuffer(4) }, width: 1, height: 1 }) };
const finder = { sight: 'live' as const, video: { videoWidth: 640, videoHeight: 480 } as HTMLVideoElement, stir: () => undefined };

beforeEach(() => {
  vi.useFakeTimers();
  Object.assign(world, { fails: true, asked: 0, dialog: false });
  vi.stubGlobal('document', { hidden: false, createElement: () => ({ getContext: () => pen }), querySelector: () => (world.dialog ? {} : null) });
});
afterEach(() => { vi.useRealTimers(); vi.unstubAllGlobals(); });

const { Frames } = await import('./frames.ts');

// Break: leave the count of failures out.
test('a reader that fails is asked three times, then never again, and that is told once', async () => {
  const failed = vi.fn();
  const frames = new Frames(finder, () => undefined, failed);
  frames.start();
  await vi.advanceTimersByTimeAsync(2_000);
  expect([world.asked, failed.mock.calls.length]).toEqual([3, 1]);
  // Asked for again by hand, it begins anew.
  world.fails = false;
  frames.start();
  await vi.advanceTimersByTimeAsync(200);
  expect(world.asked).toBeGreaterThan(3);
  expect(failed).toHaveBeenCalledTimes(1);
  frames.stop();
});

// Break: read whether a dialog is open or not.
test('behind a dialog nothing is read', async () => {
  world.fails = false;
  world.dialog = true;
  const took = vi.fn();
  const frames = new Frames(finder, took, () => undefined);
  frames.start();
  await vi.advanceTimersByTimeAsync(500);
  expect([world.asked, took.mock.calls.length]).toEqual([0, 0]);
  world.dialog = false;
  await vi.advanceTimersByTimeAsync(500);
  expect(took).toHaveBeenCalledExactlyOnceWith(['01472']);
  frames.stop();
});

// Break: leave the turn out.
test('stopped and started again while a frame is read, one goes on', async () => {
  world.fails = false;
  const frames = new Frames(finder, () => undefined, () => undefined);
  for (let i = 0; i < 5; i += 1) { frames.start(); frames.stop(); }
  frames.start();
  await vi.advanceTimersByTimeAsync(0);
  world.asked = 0;
  await vi.advanceTimersByTimeAsync(400);
  expect(world.asked).toBe(5);
  frames.stop();
});
