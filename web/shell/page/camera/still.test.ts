import { afterEach, beforeEach, expect, test, vi } from 'vitest';

vi.mock('./frame-grab', () => ({
  drawFrame: () => ({ width: 1 }),
  encode: () => Promise.resolve(new Blob(['frame'])),
}));

/** What the camera does at the next stills: a still, nothing for a long time, or a refusal; a still for ever after. */
let next: ('still' | 'late' | 'refused')[] = [];
let asked = 0;
let comeAtLast: ((still: Blob) => void) | undefined;

class Camera {
  takePhoto(): Promise<Blob> {
    asked += 1;
    const what = next.shift() ?? 'still';
    if (what === 'refused') return Promise.reject(new Error('no'));
    if (what === 'still') return Promise.resolve(new Blob(['a still']));
    return new Promise((resolve) => { comeAtLast = resolve; });
  }
}
vi.stubGlobal('ImageCapture', Camera);
const { Stills } = await import('./still.ts');

let stills: InstanceType<typeof Stills>;
async function take(): Promise<string> {
  const blob = stills.take();
  await vi.advanceTimersByTimeAsync(3000);
  return (await blob).text();
}
const takes = async (count: number): Promise<string[]> => {
  const all: string[] = [];
  for (let i = 0; i < count; i += 1) all.push(await take());
  return all;
};

beforeEach(() => {
  vi.useFakeTimers();
  [next, asked, comeAtLast] = [[], 0, undefined];
  stills = new Stills({} as HTMLVideoElement, {} as MediaStreamTrack);
});
afterEach(() => { vi.useRealTimers(); });

test('a refused still gives the frame, and after a few frames the camera is asked again', async () => {
  next = ['still', 'refused'];
  expect(await takes(8)).toEqual(['a still', 'frame', 'frame', 'frame', 'frame', 'frame', 'frame', 'a still']);
  expect(asked).toBe(3);
});

test('a camera that still owes one is not asked for another, and is asked once it has come', async () => {
  next = ['late'];
  expect(await takes(12)).toEqual(Array.from({ length: 12 }, () => 'frame'));
  expect(asked).toBe(1);
  comeAtLast?.(new Blob(['too late']));
  expect(await take()).toBe('a still');
});

test('one that never gives stills is asked more and more seldom', async () => {
  next = Array.from({ length: 90 }, () => 'refused' as const);
  await takes(80);
  expect(asked).toBeGreaterThan(2);
  expect(asked).toBeLessThanOrEqual(5);
});
