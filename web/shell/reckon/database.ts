// Reads what is stored, and never writes: so nobody's tick waits behind a paper.
// It lets go of the database the moment a newer version asks for it.

import { Copy } from '../pkg/reckon/reckon.js';

const DATABASE = 'asfound';

interface Bytes {
  bytes: ArrayBuffer;
}

export class Database {
  readonly #connection: IDBDatabase | undefined;

  private constructor(connection: IDBDatabase | undefined) {
    this.#connection = connection;
  }

  static async open(): Promise<Database> {
    const request = indexedDB.open(DATABASE);
    // There is none yet: it is not made here.
    request.onupgradeneeded = () => request.transaction?.abort();
    try {
      const connection = await settled(request);
      connection.onversionchange = () => connection.close();
      return new Database(connection);
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return new Database(undefined);
      throw error;
    }
  }

  close(): void {
    this.#connection?.close();
  }

  /** A copy of a job; of nothing when it is not here. */
  async copy(job: string | null): Promise<Copy> {
    const copy = new Copy();
    if (job === null || !this.#connection) return copy;
    // The tail first: what is sealed in between is then in the chunks as well.
    const rows = await this.#values<Bytes & { hash: string }>('tail', job);
    const names = await this.#keys('chunk', job);
    for (const row of rows) copy.entry(row.hash, new Uint8Array(row.bytes));
    for (const [, name] of names) {
      const chunk = await this.#get<Bytes>('chunk', [job, String(name)]);
      if (chunk) copy.chunk(String(name), new Uint8Array(chunk.bytes));
    }
    copy.fold();
    return copy;
  }

  /** The names of all photos and sounds. */
  async blobs(): Promise<string[]> {
    if (!this.#connection) return [];
    const keys = (await settled(this.#store('photo').getAllKeys())) as [string, number][];
    return keys.filter(([, piece]) => piece === 0).map(([hash]) => hash);
  }

  /** A photo or sound as it came. */
  async blob(hash: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    if (!this.#connection) return undefined;
    const pieces = await this.#values<Bytes>('photo', hash);
    if (pieces.length === 0) return undefined;
    if (pieces.length === 1 && pieces[0]) return new Uint8Array(pieces[0].bytes);
    return new Uint8Array(await new Blob(pieces.map(({ bytes }) => bytes)).arrayBuffer());
  }

  /** The small picture of a photo. */
  async thumb(hash: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    if (!this.#connection) return undefined;
    const kept = await this.#get<Bytes>('thumb', [hash, 'thumb']);
    return kept && new Uint8Array(kept.bytes);
  }

  #store(name: string): IDBObjectStore {
    if (!this.#connection) throw new Error('there is no database yet');
    return this.#connection.transaction([name], 'readonly').objectStore(name);
  }

  #get<T>(store: string, key: IDBValidKey): Promise<T | undefined> {
    return settled(this.#store(store).get(key) as IDBRequest<T | undefined>);
  }

  #values<T>(store: string, first: string): Promise<T[]> {
    return settled(this.#store(store).getAll(IDBKeyRange.bound([first], [first, []])) as IDBRequest<T[]>);
  }

  #keys(store: string, first: string): Promise<IDBValidKey[][]> {
    return settled(this.#store(store).getAllKeys(IDBKeyRange.bound([first], [first, []])) as IDBRequest<IDBValidKey[][]>);
  }
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('no answer'));
  });
}
