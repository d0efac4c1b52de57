// Entries as a chunk of form 1, so that the app can bring them back. The body is
// deflated without being made smaller: stored blocks need no packer.

import { blake3 } from './blake3.ts';
import { entryOf, Reading, type Entry } from './entry.ts';

/** A chunk of these entries, and its name. */
export function chunkOf(entries: Uint8Array<ArrayBuffer>[]): { name: string; bytes: Uint8Array<ArrayBuffer> } {
  const body = joined(entries.flatMap((entry) => [Uint8Array.from(number(entry.length)), entry]));
  const head = [...new TextEncoder().encode(MAGIC), 1, ...number(entries.length), ...number(body.length)];
  const bytes = joined([Uint8Array.from(head), ...stored(body)]);
  return { name: blake3(bytes), bytes };
}

const MAGIC = 'ASFOUND\n';

/** The entries of a chunk of form 1. Throws at any other, and at a damaged one. */
export async function entriesOf(chunk: Uint8Array<ArrayBuffer>): Promise<Entry[]> {
  const from = new Reading(chunk);
  if (new TextDecoder().decode(from.take(MAGIC.length)) !== MAGIC || from.take(1)[0] !== 1) throw new Error('no chunk of form 1');
  from.number();
  from.number();
  const body = new Reading(await inflated(new Uint8Array(from.rest())));
  const entries: Entry[] = [];
  while (!body.isOver) entries.push(entryOf(body.take(body.length())));
  return entries;
}

async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  return new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).arrayBuffer());
}

/** Seven bits a byte, the lowest first. */
function number(value: number): number[] {
  const bytes: number[] = [];
  for (; value >= 0x80; value = Math.floor(value / 0x80)) bytes.push((value % 0x80) | 0x80);
  return [...bytes, value];
}

function stored(body: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer>[] {
  const blocks: Uint8Array<ArrayBuffer>[] = [];
  for (let from = 0; from < body.length || blocks.length === 0; from += 0xffff) {
    const block = body.subarray(from, from + 0xffff);
    const isLast = from + 0xffff >= body.length;
    const [low, high] = [block.length & 0xff, block.length >>> 8];
    blocks.push(Uint8Array.from([Number(isLast), low, high, low ^ 0xff, high ^ 0xff]), block);
  }
  return blocks;
}

function joined(parts: Uint8Array<ArrayBuffer>[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
