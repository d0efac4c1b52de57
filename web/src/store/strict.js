// The one place that asks for strict durability.
//
// Why here: rexie opens transactions without options, and the default of every
// engine is relaxed: "complete" then comes before the disk has been told. A tick
// must not. So the method that all transactions come from is wrapped, once, in
// the worker that owns the database, before it is opened.
//
// It also notes why a transaction was taken back: rexie only says that it was.

const relaxed = new Set(['thumb', 'task']); // can be made again from the photos

let wrapped = false;
let durability;
let cause;

export function makeStrict() {
  if (wrapped) return;
  wrapped = true;
  const plain = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    if (mode !== 'readwrite') return plain.call(this, stores, mode, options);
    const names = typeof stores === 'string' ? [stores] : [...stores];
    const hint = names.every((name) => relaxed.has(name)) ? 'relaxed' : 'strict';
    const transaction = plain.call(this, stores, mode, { ...options, durability: hint });
    durability = transaction.durability;
    cause = undefined;
    transaction.addEventListener('error', (event) => {
      note(event.target?.error);
      // The abort that follows tells rexie all it needs. Told of the error first,
      // it would let go of its listeners, and then be called by the abort.
      event.stopImmediatePropagation();
    });
    transaction.addEventListener('abort', () => note(transaction.error));
    return transaction;
  };
}

function note(error) {
  // The first cause is the true one; all that follow are told "AbortError".
  if (error && (cause === undefined || cause.startsWith('AbortError'))) cause = `${error.name}: ${error.message}`;
}

/** What the last writing transaction was given; undefined where the engine does not tell. */
export function lastDurability() {
  return durability;
}

/** Why the last writing transaction was taken back, if it is known. */
export function lastCause() {
  return cause;
}
