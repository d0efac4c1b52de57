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

describe('a new version', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.resetModules();
  });

  async function start(controlled: boolean) {
    const { applyUpdate, updates, updateIsWaiting, watchForUpdates } = await import('./update.ts');
    const heard: string[] = [];
    for (const what of ['ready', 'waiting', 'changed']) updates.addEventListener(what, () => heard.push(what));
    const waiting = { postMessage: vi.fn() };
    const registration = Object.assign(new EventTarget(), { waiting, active: {}, installing: null });
    const serviceWorker = Object.assign(new EventTarget(), {
      controller: controlled ? {} : null,
      register: () => Promise.resolve(registration),
      ready: new Promise(() => undefined),
    });
    const reload = vi.fn();
    vi.stubGlobal('navigator', { serviceWorker });
    vi.stubGlobal('document', new EventTarget());
    vi.stubGlobal('location', { reload });
    watchForUpdates();
    await Promise.resolve();
    return { applyUpdate, updateIsWaiting, heard, waiting, reload, takeOver: () => serviceWorker.dispatchEvent(new Event('controllerchange')) };
  }

  it('waits until it is let in, then the page loads once', async () => {
    const page = await start(true);
    expect(page.updateIsWaiting()).toBe(true);
    expect(page.heard).toEqual(['waiting']);
    expect(page.waiting.postMessage).not.toHaveBeenCalled();
    page.applyUpdate();
    expect(page.waiting.postMessage).toHaveBeenCalledWith({ type: 'SKIP_WAITING' });
    expect(page.reload).not.toHaveBeenCalled();
    page.takeOver();
    expect(page.reload).toHaveBeenCalledOnce();
  });

  it('let in by another window is told, never loaded under the hands', async () => {
    const page = await start(true);
    page.takeOver();
    expect(page.heard).toEqual(['waiting', 'changed']);
    expect(page.reload).not.toHaveBeenCalled();
  });

  it('is not what the very first installation is', async () => {
    const page = await start(false);
    page.takeOver();
    expect(page.heard).not.toContain('changed');
    expect(page.reload).not.toHaveBeenCalled();
  });
});
