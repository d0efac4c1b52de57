// A second copy of the journal. Browsers hand localStorage to the disk only some seconds later: when the whole browser is ended,
// not just the page, the latest strokes are gone from it. What a database transaction has completed is with the system, so
// each line is also put into a small database of its own, apart from the record.

const DATABASE = 'asfound-journal';
const STORE = 'journal';
/** A database that does not open in this time is done without. */
const LONGEST = 1500;

let opening: Promise<IDBDatabase | null> | undefined;
const waiting = new Map<string, string>();
let busy = false;

function open(): Promise<IDBDatabase | null> {
  return new Promise((resolve) => {
    const giveUp = setTimeout(() => { resolve(null); }, LONGEST);
    const done = (database: IDBDatabase | null): void => {
      clearTimeout(giveUp);
      resolve(database);
    };
    try {
      const request = indexedDB.open(DATABASE, 1);
      request.onupgradeneeded = () => { request.result.createObjectStore(STORE); };
      request.onsuccess = () => {
        const database = request.result;
        // Opened anew at the next line.
        const closed = (): void => { database.close(); opening = undefined; };
        database.onversionchange = closed;
        database.onclose = closed;
        done(database);
      };
      request.onerror = () => { done(null); };
    } catch {
      // No database in this window: the first copy has to do.
      done(null);
    }
  });
}

/** Puts a line down as soon as the one before it is; of several for one key the latest. */
export function mirror(key: string, line: string): void {
  if (typeof indexedDB === 'undefined') return;
  waiting.set(key, line);
  if (!busy) void writeWaiting();
}

async function writeWaiting(): Promise<void> {
  busy = true;
  while (waiting.size > 0) {
    const lines = [...waiting];
    waiting.clear();
    try {
      const database = await (opening ??= open());
      if (!database) break;
      await put(database, lines);
    } catch {
      opening = undefined;
    }
  }
  busy = false;
}

function put(database: IDBDatabase, lines: readonly (readonly [string, string])[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(STORE, 'readwrite');
    transaction.oncomplete = () => { resolve(); };
    transaction.onabort = () => { reject(transaction.error ?? new Error('aborted')); };
    const store = transaction.objectStore(STORE);
    for (const [key, line] of lines) store.put(line, key);
    transaction.commit();
  });
}

/** All lines of the second copy; none where it cannot be read. */
export async function mirrored(): Promise<[key: string, line: string][]> {
  if (typeof indexedDB === 'undefined') return [];
  const database = await (opening ??= open());
  if (!database) return [];
  return new Promise((resolve) => {
    const found: [string, string][] = [];
    const transaction = database.transaction(STORE, 'readonly');
    const cursor = transaction.objectStore(STORE).openCursor();
    cursor.onsuccess = () => {
      const at = cursor.result;
      if (!at) return;
      if (typeof at.key === 'string' && typeof at.value === 'string') found.push([at.key, at.value]);
      at.continue();
    };
    transaction.oncomplete = () => { resolve(found); };
    transaction.onabort = () => { resolve([]); };
  });
}
