import { afterEach, expect, test, vi } from 'vitest';
import { waysOut } from './ways-out.ts';

const zip = new File(['bytes'], 'Corvane-2026-11-25.zip', { type: 'application/zip' });
const csv = new File(['a,b'], 'parts.csv', { type: 'text/csv;charset=utf-8' });

/** A browser that shares files of these kinds and endings. */
function browser(standalone: boolean, takes: (file: File) => boolean, withShare = true): void {
  vi.stubGlobal('navigator', {
    standalone,
    ...(withShare && { share: () => Promise.resolve(), canShare: ({ files }: { files: File[] }) => files.every(takes) }),
  });
}
afterEach(() => { vi.unstubAllGlobals(); });

test('in a browser what cannot be shared is saved, under its own name', () => {
  browser(false, ({ type }) => type === 'text/plain');
  expect(waysOut(zip)).toEqual({ share: null, renamed: false, save: 'file' });
});

test('an installed app on iOS shares what it can, and never opens a file over itself', () => {
  browser(true, () => true);
  expect(waysOut(zip)).toEqual({ share: zip, renamed: false, save: null });
});

test('the same bytes under a kind that may be shared, before anything else', async () => {
  browser(true, ({ type, name }) => type === 'text/plain' && name.endsWith('.txt'));
  const ways = waysOut(zip);
  expect(ways).toMatchObject({ renamed: true, save: null });
  expect(ways.share?.name).toBe('Corvane-2026-11-25.zip.txt');
  expect(await ways.share?.text()).toBe('bytes');
  browser(true, ({ type, name }) => type === 'application/octet-stream' && name.endsWith('.zip'));
  expect(waysOut(zip)).toMatchObject({ renamed: false, save: null });
  expect(waysOut(zip).share?.name).toBe(zip.name);
  browser(true, ({ type }) => type === 'text/plain');
  expect(waysOut(csv)).toMatchObject({ renamed: false, save: null });
});

test('where nothing can be shared it is saved all the same: no dead end', () => {
  browser(true, () => false);
  expect(waysOut(zip)).toEqual({ share: null, renamed: false, save: 'over' });
  browser(true, () => true, false);
  expect(waysOut(zip)).toEqual({ share: null, renamed: false, save: 'over' });
});
