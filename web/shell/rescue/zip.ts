// A zip of stored members, written front to back into parts that the browser may
// keep on disk. Members and offsets stay below the old limits: whoever fills it
// begins another in time.

const TABLE = Array.from({ length: 256 }, (_, index) => {
  let rest = index;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest >>> 0;
});

/** CRC-32 as in the zip format. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (TABLE[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

/** Far below the 4 GiB and the 65,535 members that the format holds, and what a phone can share. */
const MOST_BYTES = 1_000_000_000;
const MOST_MEMBERS = 60_000;
/** Names are UTF-8. */
const UTF8 = 0x0800;
/** 1980-01-01: the true times are in the record. */
const DAY = 0x0021;

export class Zip {
  readonly #parts: BlobPart[] = [];
  readonly #directory: Uint8Array<ArrayBuffer>[] = [];
  #size = 0;

  get isFull(): boolean {
    return this.#size > MOST_BYTES || this.#directory.length >= MOST_MEMBERS;
  }

  get isEmpty(): boolean {
    return this.#directory.length === 0;
  }

  add(path: string, bytes: Uint8Array<ArrayBuffer>): void {
    const name = new TextEncoder().encode(path);
    const rest = [20, UTF8, 0, 0, DAY];
    const sizes = [crc32(bytes), bytes.length, bytes.length];
    const header = packed([0x04034b50], rest, sizes, [name.length, 0]);
    this.#directory.push(packed([0x02014b50], [20, ...rest], sizes, [name.length, 0, 0, 0, 0], [0, this.#size]), name);
    this.#size += header.length + name.length + bytes.length;
    // A blob of its own may go to the disk; bytes in an array may not.
    this.#parts.push(header, name, new Blob([bytes]));
  }

  file(name: string): File {
    const length = this.#directory.reduce((sum, part) => sum + part.length, 0);
    const count = this.#directory.length / 2;
    const end = packed([0x06054b50], [0, 0, count, count], [length, this.#size], [0]);
    return new File([...this.#parts, ...this.#directory, end], name, { type: 'application/zip' });
  }
}

/** Little-endian numbers: lists of four bytes and of two, in turn. */
function packed(...lists: number[][]): Uint8Array<ArrayBuffer> {
  const bytes = lists.flatMap((list, index) => list.flatMap((value) => littleEndian(value, index % 2 === 0 ? 4 : 2)));
  return new Uint8Array(bytes);
}

function littleEndian(value: number, bytes: number): number[] {
  return Array.from({ length: bytes }, (_, index) => (value >>> (8 * index)) & 0xff);
}
