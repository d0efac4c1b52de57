import { words } from '../words';
import { bytes } from '../words/format';
import type { Result } from './result';

const NAME = 'asfound-self-test';
const SIZE = 1_000_000;

/** Writes a million bytes through to the disk in a database of its own, reads them back and compares, then throws it away. */
export async function storageTest(): Promise<Result[]> {
  const say = words().selfTest.what;
  try {
    const database = await opened();
    try {
      const written = crypto.getRandomValues(new Uint8Array(65_536));
      const value = new Uint8Array(SIZE).map((_, i) => written[i % written.length] ?? 0);
      const start = performance.now();
      const durability = await put(database, value.buffer);
      const took = performance.now() - start;
      const back = await read(database);
      const same = back instanceof ArrayBuffer && equal(new Uint8Array(back), value);
      return [
        { name: 'storage', works: same, said: same ? say.ms(took) : say.differs },
        { name: 'durability', works: durability === '' ? null : durability === 'strict', said: durability },
      ];
    } finally {
      database.close();
      indexedDB.deleteDatabase(NAME);
    }
  } catch (error) {
    return [{ name: 'storage', works: false, said: error instanceof Error ? error.message : String(error) }];
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => { request.result.createObjectStore('test'); };
    request.onsuccess = () => { resolve(request.result); };
    request.onerror = () => { reject(request.error ?? new Error('open')); };
  });
}

/** Done when the transaction is complete, which is the only thing that counts; answers with the durability it had. */
function put(database: IDBDatabase, value: ArrayBuffer): Promise<string> {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction('test', 'readwrite', { durability: 'strict' });
    transaction.objectStore('test').put(value, 'bytes');
    transaction.oncomplete = () => { resolve('durability' in transaction ? transaction.durability : ''); };
    transaction.onabort = () => { reject(transaction.error ?? new Error('abort')); };
  });
}

function read(database: IDBDatabase): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const request: IDBRequest<unknown> = database.transaction('test').objectStore('test').get('bytes');
    request.onsuccess = () => { resolve(request.result); };
    request.onerror = () => { reject(request.error ?? new Error('read')); };
  });
}

function equal(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, i) => byte === other[i]);
}

export async function roomTest(): Promise<Result[]> {
  const say = words().selfTest.what;
  const persisted = await navigator.storage?.persisted?.().catch(() => undefined);
  const { usage, quota }: StorageEstimate = await navigator.storage?.estimate?.().catch((): StorageEstimate => ({})) ?? {};
  return [
    { name: 'persist', works: persisted ? true : null, said: persisted === undefined ? say.notOffered : persisted ? say.promised : say.notPromised },
    { name: 'room', works: quota === undefined ? null : true, said: quota === undefined || usage === undefined ? say.notOffered : words().safeKeeping.of(usage, quota) || bytes(quota) },
  ];
}
