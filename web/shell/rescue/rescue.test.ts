import { expect, test } from 'vitest';
import address from '../../../tests/stored/chunk-form-1.chunk?url&inline';
import { blake3 } from './blake3.ts';
import { chunkOf, entriesOf } from './chunk.ts';
import { entryOf } from './entry.ts';
import { lineOf, nameOf } from './job-line.ts';
import type { Job, Stored } from './stored.ts';
import { crc32, Zip } from './zip.ts';

const pattern = (length: number): Uint8Array<ArrayBuffer> => Uint8Array.from({ length }, (_, index) => index % 251);

// test_vectors.json of the BLAKE3 team: input bytes 0, 1, … 250, 0, 1, …
test.each([
  [0, 'af1349b9f5f9a1a6a0404dea36dcc9499bcb25c9adc112b7cc9a93cae41f3262'],
  [1, '2d3adedff11b61f14c886e35afa036736dcd87a74d27b5c1510225d0f592e213'],
  [1024, '42214739f095a406f3fc83deb889744ac00df831c10daa55189b5d121c855af7'],
  [1025, 'd00278ae47eb27b34faecf67b4fe263f82d5412916c1ffd97c8cb7fb814b8444'],
  [8193, 'bab6c09cb8ce8cf459261398d2e7aef35700bf488116ceb94a36d0f5f1b7bc3b'],
])('the hash of %i bytes is the published one', (length, hash) => {
  expect(blake3(pattern(length))).toBe(hash);
});

test('the checksum is the published one', () => {
  // The check value of CRC-32/ISO-HDLC.
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
});

test('entries lie in a chunk as the format says', () => {
  const { bytes } = chunkOf([pattern(3), pattern(200)]);
  const body = [3, 0, 1, 2, 0xc8, 1, ...pattern(200)];
  expect([...bytes.subarray(0, 12)]).toEqual([...new TextEncoder().encode('ASFOUND\n'), 1, 2, body.length % 128 | 128, 1]);
  expect([...bytes.subarray(12, 17)]).toEqual([1, body.length, 0, body.length ^ 0xff, 0xff]);
  expect([...bytes.subarray(17)]).toEqual(body);
});

test('a zip ends with the count of its members', async () => {
  const zip = new Zip();
  zip.add('a.txt', pattern(5));
  zip.add('b/ö.bin', pattern(300));
  const bytes = new Uint8Array(await zip.file('z.zip').arrayBuffer());
  expect([...bytes.subarray(-22, -10)]).toEqual([0x50, 0x4b, 5, 6, 0, 0, 0, 0, 2, 0, 2, 0]);
});

const frozen = new Uint8Array(await (await fetch(address)).arrayBuffer());
const hex = (byte: string): string => byte.repeat(16);

test('the frozen chunk is read: names and days as chunk-form-1.md says', async () => {
  const entries = await entriesOf(frozen);
  expect(entries).toHaveLength(6);
  expect(entries.slice(0, 3).map(({ at }) => at)).toEqual([1_700_000_000_000, -1, 0]);
  // The last entry of all cleared the name, over itself too.
  expect(nameOf(hex('02'), entries)).toBe('');
  expect(nameOf(hex('02'), entries.filter(({ id }) => !id.endsWith('18446744073709551615')))).toBe('Achsschenkel, “left”');
  expect(nameOf(hex('01'), entries)).toBe('');
  await expect(entriesOf(frozen.slice(0, -4))).rejects.toThrow();
  await expect(entriesOf(pattern(40))).rejects.toThrow();
});

/** An entry of one device that gives the job a name, over others. */
function naming(seq: number, at: number, name: string, over: number[]): Uint8Array<ArrayBuffer> {
  const text = new TextEncoder().encode(name);
  const id = (number: number): number[] => [...Array.from({ length: 8 }, () => 7), number];
  return Uint8Array.from([...id(seq), at * 2, 1, ...Array.from({ length: 16 }, () => 1), 2, 4, text.length, ...text, over.length, ...over.flatMap(id)]);
}

test('a job never opened here is called by its entries, sealed or not', async () => {
  const chunk = chunkOf([naming(1, 5, 'Old name', []), naming(2, 20, 'Corvane', [1])]);
  const rows = new Map([[chunk.name, chunk.bytes], ['3', naming(3, 10, 'Corvane tourer', [2])]]);
  const stored = { bytes: (_: string, key: IDBValidKey) => {
    const found = rows.get(String((key as unknown[]).at(-1)));
    return found ? Promise.resolve({ bytes: found.buffer }) : Promise.reject(new Error('gone'));
  } } as unknown as Stored;
  const job: Job = { id: hex('01'), name: '', chunks: [chunk.name], entries: [['07'.repeat(8), 3]] };
  expect(await lineOf(stored, job)).toEqual({ name: 'Corvane tourer', entries: 3, last: 20 });
  expect(await lineOf(stored, { ...job, entries: [] })).toEqual({ name: 'Corvane', entries: 2, last: 20 });
  expect(await lineOf(stored, { ...job, chunks: [chunk.name, 'lost'] })).toMatchObject({ name: 'Corvane tourer', entries: null });
  expect(await lineOf(stored, { ...job, chunks: [], entries: [], name: 'As noted' })).toEqual({ name: 'As noted', entries: 0, last: null });
});

test('an entry that ends too early is none', () => {
  const entry = naming(1, 5, 'Old name', []);
  expect(entryOf(entry).ops[0]?.text).toBe('Old name');
  expect(() => entryOf(entry.slice(0, -3))).toThrow();
});
