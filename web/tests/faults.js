// Faults for tests, put between the store and the browser's database.

const prototype = IDBDatabase.prototype;

/** The next writing transaction is taken back as soon as its first put has succeeded. */
export function abortAfterPut(name) {
  const put = IDBObjectStore.prototype.put;
  const add = IDBObjectStore.prototype.add;
  const once = (plain) =>
    function (...values) {
      IDBObjectStore.prototype.put = put;
      IDBObjectStore.prototype.add = add;
      const request = plain.apply(this, values);
      const { transaction } = this;
      if (name) Object.defineProperty(transaction, 'error', { value: new DOMException('injected', name) });
      request.addEventListener('success', () => queueMicrotask(() => setTimeoutFree(() => transaction.abort())));
      return request;
    };
  IDBObjectStore.prototype.put = once(put);
  IDBObjectStore.prototype.add = once(add);
}

// After the store has seen its success, and before the transaction can end.
function setTimeoutFree(then) {
  queueMicrotask(() => queueMicrotask(then));
}

/** Every put throws at once, as an engine that is out of room does. */
export function refusePuts(name) {
  const put = IDBObjectStore.prototype.put;
  const add = IDBObjectStore.prototype.add;
  const refuse = () => {
    throw new DOMException('injected', name);
  };
  IDBObjectStore.prototype.put = refuse;
  IDBObjectStore.prototype.add = refuse;
  return () => Object.assign(IDBObjectStore.prototype, { put, add });
}

/** Closes every connection from now on, the moment it is used. */
export function loseConnections(times) {
  const transaction = prototype.transaction;
  prototype.transaction = function (...values) {
    if (times-- > 0) throw new DOMException('the connection is closing', 'InvalidStateError');
    prototype.transaction = transaction;
    return transaction.apply(this, values);
  };
}

/** Raises the version of a database beyond what this build knows. */
export function raiseVersion(name, version) {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onsuccess = () => resolve(request.result.close());
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
}

/** Flips one bit of what lies first in a store. */
export function flipBit(name, store) {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const database = request.result;
      const transaction = database.transaction([store], 'readwrite');
      transaction.objectStore(store).openCursor().onsuccess = ({ target }) => {
        const value = target.result.value;
        new Uint8Array(value.bytes)[value.bytes.byteLength - 1] ^= 1;
        target.result.update(value);
      };
      transaction.oncomplete = () => resolve(database.close());
      transaction.onabort = () => reject(transaction.error);
    };
  });
}

export const tellsDurability = 'durability' in IDBTransaction.prototype;
export function durabilityIsTold() {
  return tellsDurability;
}
