// The service worker seen from the page. A new version waits until the person
// agrees; nothing here ever replaces the app under someone's hands.
//
// Events of `updates`, none of which carries anything:
//   ready    the active worker holds every file: the app starts with no signal
//   waiting  a new version is there and waits for `applyUpdate`
//   changed  a new version took over because another window asked for it: this
//            window should finish what it stores, then `location.reload()`

export const updates = new EventTarget();

let waiting: ServiceWorker | undefined;
let agreedHere = false;

/** Whether a new version waits. */
export function updateIsWaiting(): boolean {
  return waiting !== undefined;
}

/** Registers the service worker, which may be refused: the app works on without. */
export function watchForUpdates(): void {
  if (!('serviceWorker' in navigator)) return;
  const container = navigator.serviceWorker;
  const controlledBefore = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    if (agreedHere) location.reload();
    else if (controlledBefore) tell('changed');
  });
  void container.register('./sw.js').then(watch, () => undefined);
  void container.ready.then(tellWhenComplete);
}

/** Lets the waiting version take over. The caller has stored everything. */
export function applyUpdate(): void {
  if (!waiting) return;
  agreedHere = true;
  // The message goes to the waiting worker: the active one would ignore it.
  waiting.postMessage({ type: 'SKIP_WAITING' });
}

function watch(registration: ServiceWorkerRegistration): void {
  noteWaiting(registration);
  registration.addEventListener('updatefound', () => {
    const installing = registration.installing;
    installing?.addEventListener('statechange', () => noteWaiting(registration));
  });
  // An installed app may stay open for days: ask when it is looked at again.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void registration.update().catch(() => undefined);
  });
}

function noteWaiting(registration: ServiceWorkerRegistration): void {
  // Without an active worker this is the first installation, not an update.
  if (!registration.waiting || !registration.active || registration.waiting === waiting) return;
  waiting = registration.waiting;
  tell('waiting');
}

async function tellWhenComplete(registration: ServiceWorkerRegistration): Promise<void> {
  await activated(registration.active);
  if (await everythingIsKept()) tell('ready');
}

function activated(worker: ServiceWorker | null): Promise<void> {
  return new Promise((resolve) => {
    if (!worker || worker.state === 'activated') return resolve();
    worker.addEventListener('statechange', () => worker.state === 'activated' && resolve());
  });
}

/** Compares the list that came with this build to what the caches really hold. */
export async function everythingIsKept(): Promise<boolean> {
  try {
    const list = await caches.match(new URL('precache.json', document.baseURI).href, { ignoreSearch: true });
    if (!list) return false;
    const files: unknown = await list.json();
    if (!Array.isArray(files) || files.length === 0) return false;
    return (await Promise.all(files.map(isKept))).every(Boolean);
  } catch {
    // Caches may be refused altogether, as in some private windows.
    return false;
  }
}

async function isKept(file: unknown): Promise<boolean> {
  if (typeof file !== 'string') return false;
  return (await caches.match(new URL(file, document.baseURI).href, { ignoreSearch: true })) !== undefined;
}

function tell(what: 'ready' | 'waiting' | 'changed'): void {
  updates.dispatchEvent(new Event(what));
}
