// The database as it lies there, without the app. Nothing is written, nothing
// upgraded, whatever version made it.

const DATABASE = 'asfound';

export interface Job {
  id: string;
  name: string;
  chunks: string[];
  entries: [string, number][];
}

export class Stored {
  readonly #connection: IDBDatabase;

  private constructor(connection: IDBDatabase) {
    this.#connection = connection;
  }

  /** Nothing when there is no database. */
  static async open(): Promise<Stored | undefined> {
    const request = indexedDB.open(DATABASE);
    let absent = false;
    request.onupgradeneeded = () => {
      absent = true;
      request.transaction?.abort();
    };
    try {
      const connection = await settled(request);
      connection.onversionchange = () => connection.close();
      return new Stored(connection);
    } catch (error) {
      if (absent) return undefined;
      throw error;
    }
  }

  async jobs(): Promise<Job[]> {
    const jobs = new Map<string, Job>();
    const of = (id: string): Job => jobs.get(id) ?? jobs.set(id, { id, name: '', chunks: [], entries: [] }).get(id)!;
    for (const [job, name] of (await this.#keys('chunk')) as [string, string][]) of(job).chunks.push(name);
    for (const [job, replica, seq] of (await this.#keys('tail')) as [string, string, number][]) of(job).entries.push([replica, seq]);
    for (const job of jobs.values()) job.name = await this.#name(job.id);
    return [...jobs.values()];
  }

  /** Photos and sounds: their names, and how many pieces each has. */
  async blobs(): Promise<Map<string, number>> {
    const pieces = new Map<string, number>();
    for (const [hash, piece] of (await this.#keys('photo')) as [string, number][]) pieces.set(hash, Math.max(pieces.get(hash) ?? 0, piece + 1));
    return pieces;
  }

  async quarantined(): Promise<[string, string][]> {
    return (await this.#keys('quarantine')) as [string, string][];
  }

  async bytes(store: string, key: IDBValidKey): Promise<{ bytes: ArrayBuffer; type?: string }> {
    const value: unknown = await settled(this.#store(store).get(key));
    if (typeof value === 'object' && value !== null && 'bytes' in value && value.bytes instanceof ArrayBuffer) {
      return 'type' in value && typeof value.type === 'string' ? { bytes: value.bytes, type: value.type } : { bytes: value.bytes };
    }
    throw new Error(`nothing at ${store} ${String(key)}`);
  }

  async #name(job: string): Promise<string> {
    const line: unknown = await settled(this.#store('meta').get(`job:${job}`)).catch(() => undefined);
    try {
      const read: unknown = JSON.parse(String(line));
      return typeof read === 'object' && read !== null && 'name' in read ? String(read.name) : '';
    } catch {
      return '';
    }
  }

  async #keys(store: string): Promise<IDBValidKey[]> {
    if (!this.#connection.objectStoreNames.contains(store)) return [];
    return settled(this.#store(store).getAllKeys());
  }

  #store(name: string): IDBObjectStore {
    return this.#connection.transaction([name], 'readonly').objectStore(name);
  }
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('no answer'));
  });
}
