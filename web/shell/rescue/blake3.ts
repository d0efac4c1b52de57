// BLAKE3 (the plain hash), after its specification, section 2: the name of a
// chunk is the hash of its bytes.

const IV = [0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19];
const ORDER = [2, 6, 3, 10, 7, 0, 4, 13, 1, 11, 12, 5, 9, 14, 15, 8];
const CHUNK_START = 1;
const CHUNK_END = 2;
const PARENT = 4;
const ROOT = 8;

/** What the last step of a subtree takes in: it is done again with ROOT when the subtree is all there is. */
interface Node {
  value: Uint32Array;
  block: Uint32Array;
  counter: number;
  length: number;
  flags: number;
}

/** The hash of bytes as 64 hexadecimal figures. */
export function blake3(bytes: Uint8Array): string {
  const root = subtree(bytes, 0);
  const words = compressed({ ...root, flags: root.flags | ROOT });
  const out = new DataView(new ArrayBuffer(32));
  for (let index = 0; index < 8; index++) out.setUint32(4 * index, at(words, index), true);
  return Array.from(new Uint8Array(out.buffer), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The left side takes the largest power of two of chunks that leaves something for the right. */
function subtree(bytes: Uint8Array, counter: number): Node {
  if (bytes.length <= 1024) return chunk(bytes, counter);
  let left = 1024;
  while (left * 2 < bytes.length) left *= 2;
  const block = new Uint32Array(16);
  block.set(compressed(subtree(bytes.subarray(0, left), counter)), 0);
  block.set(compressed(subtree(bytes.subarray(left), counter + left / 1024)), 8);
  return { value: Uint32Array.from(IV), block, counter: 0, length: 64, flags: PARENT };
}

function chunk(bytes: Uint8Array, counter: number): Node {
  let value = Uint32Array.from(IV);
  for (let from = 0; ; from += 64) {
    const piece = bytes.subarray(from, from + 64);
    const isLast = from + 64 >= bytes.length;
    const flags = (from === 0 ? CHUNK_START : 0) | (isLast ? CHUNK_END : 0);
    const node = { value, block: words(piece), counter, length: piece.length, flags };
    if (isLast) return node;
    value = compressed(node);
  }
}

function words(bytes: Uint8Array): Uint32Array {
  const padded = new Uint8Array(64);
  padded.set(bytes);
  const view = new DataView(padded.buffer);
  return Uint32Array.from({ length: 16 }, (_, index) => view.getUint32(4 * index, true));
}

function compressed({ value, block, counter, length, flags }: Node): Uint32Array<ArrayBuffer> {
  const state = Uint32Array.from([...value, ...IV.slice(0, 4), counter >>> 0, Math.floor(counter / 2 ** 32), length, flags]);
  let message = block;
  for (let round = 0; round < 7; round++) {
    for (let index = 0; index < 4; index++) mix(state, index, 4 + index, 8 + index, 12 + index, at(message, 2 * index), at(message, 2 * index + 1));
    for (let index = 0; index < 4; index++) {
      const [b, c, d] = [4 + ((index + 1) % 4), 8 + ((index + 2) % 4), 12 + ((index + 3) % 4)];
      mix(state, index, b, c, d, at(message, 8 + 2 * index), at(message, 9 + 2 * index));
    }
    const before = message;
    message = Uint32Array.from(ORDER, (from) => at(before, from));
  }
  return Uint32Array.from({ length: 8 }, (_, index) => at(state, index) ^ at(state, index + 8));
}

function mix(state: Uint32Array, a: number, b: number, c: number, d: number, x: number, y: number): void {
  state[a] = at(state, a) + at(state, b) + x;
  state[d] = turned(at(state, d) ^ at(state, a), 16);
  state[c] = at(state, c) + at(state, d);
  state[b] = turned(at(state, b) ^ at(state, c), 12);
  state[a] = at(state, a) + at(state, b) + y;
  state[d] = turned(at(state, d) ^ at(state, a), 8);
  state[c] = at(state, c) + at(state, d);
  state[b] = turned(at(state, b) ^ at(state, c), 7);
}

function turned(word: number, by: number): number {
  return ((word >>> by) | (word << (32 - by))) >>> 0;
}

function at(words: Uint32Array, index: number): number {
  return words[index] ?? 0;
}
