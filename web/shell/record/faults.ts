// Faults on purpose, for the journeys. Nothing here is loaded unless the page's
// address says `?faults`; then the page's `desk` also stands at `globalThis.desk`,
// and `desk.fault(name, on)` applies one of these in the record worker:
//
//   lasting until turned off, also over a restart of the worker
//     quota-exceeded       every put is refused: there is no room
//     connection-lost      the connection is dead and the database cannot be opened
//     connection-hung      requests are taken and never answered
//     open-hung            opening never answers (takes effect at the next opening)
//     private-window       opening is refused (takes effect at the next opening)
//     read-failed          photos cannot be read back
//     slow-<ms>            each command is answered so much later
//   once
//     transaction-aborted  the next command's transaction is taken back after a put of it succeeded
//     newer-database       the database is raised to a version that this build does not know
//     chunk-damaged        one bit of what was stored first in this database is flipped
//     worker-trapped       the next command traps before anything is stored
//     end-before-answer    the worker ends between the next commit and its answer

const DATABASE = 'asfound';
const on = new Set<string>();

export function applyFault(fault: string, enabled: boolean): void | Promise<void> {
  if (!enabled) return void on.delete(fault);
  if (fault === 'newer-database') return raiseVersion();
  if (fault === 'chunk-damaged') return flipBit();
  on.add(fault);
}

function once(fault: string): boolean {
  return on.delete(fault);
}

/** Before a command reaches the store. */
export function beforeCommand(): void {
  if (once('worker-trapped')) trap();
}

/** Between the commit and the answer. */
export async function beforeAnswer(): Promise<void> {
  const slow = [...on].find((fault) => fault.startsWith('slow-'));
  if (slow) await new Promise((resolve) => setTimeout(resolve, Number(slow.slice(5))));
  if (!once('end-before-answer')) return;
  self.close();
  // Whatever was under way when a worker is ended never comes back.
  await new Promise(() => undefined);
}

/** A wasm module that does nothing but trap when it starts. */
function trap(): void {
  const bytes = [0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 8, 1, 0, 10, 5, 1, 3, 0, 0, 11];
  new WebAssembly.Instance(new WebAssembly.Module(new Uint8Array(bytes)));
}

const openPlain = IDBFactory.prototype.open;
IDBFactory.prototype.open = function (name: string, version?: number): IDBOpenDBRequest {
  if (on.has('private-window')) throw new DOMException('injected', 'SecurityError');
  if (on.has('connection-lost')) throw new DOMException('injected', 'UnknownError');
  const request = openPlain.call(this, name, version);
  if (on.has('open-hung')) hush(request, ['success', 'error', 'blocked', 'upgradeneeded']);
  return request;
};

const transactionPlain = IDBDatabase.prototype.transaction;
IDBDatabase.prototype.transaction = function (stores: string | Iterable<string>, mode?: IDBTransactionMode, options?: IDBTransactionOptions): IDBTransaction {
  if (on.has('connection-lost')) throw new DOMException('injected', 'InvalidStateError');
  const transaction = transactionPlain.call(this, stores, mode, options);
  if (on.has('connection-hung')) hush(transaction, ['complete', 'error', 'abort']);
  return transaction;
};

for (const name of ['put', 'add'] as const) {
  const plain = IDBObjectStore.prototype[name];
  IDBObjectStore.prototype[name] = function (value: unknown, key?: IDBValidKey): IDBRequest<IDBValidKey> {
    if (on.has('quota-exceeded')) throw new DOMException('injected', 'QuotaExceededError');
    const request = plain.call(this, value, key);
    if (on.has('connection-hung')) hush(request, ['success', 'error']);
    if (this.name === 'tail' && once('transaction-aborted')) doomed.set(this.transaction, 0);
    if (doomed.has(this.transaction)) abortAfterLast(request, this);
    return request;
  };
}

for (const name of ['get', 'getAll', 'getAllKeys'] as const) {
  const plain: unknown = IDBObjectStore.prototype[name];
  const hooked = function (this: IDBObjectStore, ...given: unknown[]): IDBRequest {
    if (on.has('read-failed') && this.name === 'photo') throw new DOMException('injected', 'NotReadableError');
    const request = (plain as (...given: unknown[]) => IDBRequest).apply(this, given);
    if (on.has('connection-hung')) hush(request, ['success', 'error']);
    return request;
  };
  Object.assign(IDBObjectStore.prototype, { [name]: hooked });
}

/** Keeps events from whoever listens later. */
function hush(target: EventTarget, events: string[]): void {
  for (const event of events) target.addEventListener(event, (happened) => happened.stopImmediatePropagation());
}

/** Transactions to be taken back, with how many puts they were given. */
const doomed = new WeakMap<IDBTransaction, number>();
const getPlain = IDBObjectStore.prototype.get;

/** Takes the transaction back once a put has succeeded and none follows: whoever put it has been told of its success. */
function abortAfterLast(request: IDBRequest, store: IDBObjectStore): void {
  const count = (doomed.get(store.transaction) ?? 0) + 1;
  doomed.set(store.transaction, count);
  request.addEventListener('success', () => {
    // A read keeps the transaction open until the next put, if there is one, has been made.
    getPlain.call(store, ['']).onsuccess = () => doomed.get(store.transaction) === count && store.transaction.abort();
  });
}

function raiseVersion(): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = openPlain.call(indexedDB, DATABASE, 99);
    request.onsuccess = () => resolve(request.result.close());
    request.onerror = () => reject(request.error);
  });
}

function flipBit(): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = openPlain.call(indexedDB, DATABASE);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const transaction = transactionPlain.call(request.result, ['chunk', 'tail'], 'readwrite');
      flipFirst(transaction.objectStore('chunk'), () => flipFirst(transaction.objectStore('tail'), () => undefined));
      transaction.oncomplete = () => resolve(request.result.close());
      transaction.onabort = () => reject(transaction.error);
    };
  });
}

function flipFirst(store: IDBObjectStore, otherwise: () => void): void {
  const request = store.openCursor();
  request.onsuccess = () => {
    const cursor = request.result;
    if (!cursor) return otherwise();
    const value = cursor.value as { bytes: ArrayBuffer };
    const bytes = new Uint8Array(value.bytes);
    bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
    cursor.update(value);
  };
}
