import { expect, test } from 'vitest';
import { blake3 } from './blake3.ts';
import { chunkOf } from './chunk.ts';
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
