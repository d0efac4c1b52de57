// An entry's bytes, as far as a name and a day need them. Frozen with the first
// chunk: little-endian numbers of base 128, lengths before runs.

/** One field of one record that an entry wrote; only texts are read. */
export interface Op {
  record: string;
  field: number;
  text: string | undefined;
  /** The entries that it overwrote. */
  over: string[];
}

export interface Entry {
  /** Sorts as the record sorts: by device, then by number. */
  id: string;
  /** Milliseconds since 1970, by the clock of the device. */
  at: number;
  ops: Op[];
}

const TEXT = 4;

/** Reads one entry. Throws where the bytes are not what they should be. */
export function entryOf(bytes: Uint8Array): Entry {
  const from = new Reading(bytes);
  const id = from.entryId();
  const at = Number(from.signed());
  const ops = Array.from({ length: from.length() }, () => opOf(from));
  return { id, at, ops };
}

function opOf(from: Reading): Op {
  const record = hex(from.take(16));
  const field = Number(from.number());
  const [mark = 0] = from.take(1);
  const value = from.take(from.length());
  const over = Array.from({ length: from.length() }, () => from.entryId());
  return { record, field, text: mark === TEXT ? new TextDecoder().decode(value) : undefined, over };
}

/** Numbers and runs, one after another. */
export class Reading {
  #at = 0;
  readonly #bytes: Uint8Array;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  get isOver(): boolean {
    return this.#at >= this.#bytes.length;
  }

  take(length: number): Uint8Array {
    if (this.#at + length > this.#bytes.length) throw new Error('it ends too early');
    this.#at += length;
    return this.#bytes.subarray(this.#at - length, this.#at);
  }

  rest(): Uint8Array {
    return this.take(this.#bytes.length - this.#at);
  }

  number(): bigint {
    let number = 0n;
    for (let shift = 0n; ; shift += 7n) {
      const [byte = 0] = this.take(1);
      number |= BigInt(byte & 0x7f) << shift;
      if (byte < 0x80) return number;
    }
  }

  /** A count of what follows: never more than there are bytes. */
  length(): number {
    const length = Number(this.number());
    if (length > this.#bytes.length) throw new Error('it ends too early');
    return length;
  }

  signed(): bigint {
    const number = this.number();
    return (number >> 1n) ^ -(number & 1n);
  }

  entryId(): string {
    const replica = hex(this.take(8));
    return `${replica}:${String(this.number()).padStart(20, '0')}`;
  }
}

function hex(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
