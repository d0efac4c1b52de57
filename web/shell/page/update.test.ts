import { afterEach, describe, expect, it, vi } from 'vitest';
import { everythingIsKept } from './update.ts';

const base = 'https://host.example/some/path/';

function keep(list: unknown, kept: string[]): void {
  const held = new Map<string, unknown>(kept.map((file) => [base + file, {}]));
  if (list !== undefined) held.set(`${base}precache.json`, { json: () => Promise.resolve(list) });
  vi.stubGlobal('document', { baseURI: base });
  vi.stubGlobal('caches', { match: (address: string) => Promise.resolve(held.get(address)) });
}

describe('ready for use with no signal', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('when every file of the list is kept', async () => {
    keep(['index.html', 'assets/a.wasm'], ['index.html', 'assets/a.wasm']);
    expect(await everythingIsKept()).toBe(true);
  });

  it('never when one is missing', async () => {
    keep(['index.html', 'assets/a.wasm'], ['index.html']);
    expect(await everythingIsKept()).toBe(false);
  });

  it('never without a list, or with one that says nothing', async () => {
    for (const list of [undefined, [], {}, [1]]) {
      keep(list, ['index.html']);
      expect(await everythingIsKept()).toBe(false);
    }
  });

  it('never where caches are refused', async () => {
    keep(['index.html'], ['index.html']);
    vi.stubGlobal('caches', { match: () => Promise.reject(new Error('SecurityError')) });
    expect(await everythingIsKept()).toBe(false);
  });
});
