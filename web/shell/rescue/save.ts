import { rescue as words } from '../page/words/rescue.ts';
import { chunkOf } from './chunk.ts';
import type { Job, Stored } from './stored.ts';
import { Zip } from './zip.ts';

/** What was saved, and how much of it could not be read. */
export interface Saved {
  files: File[];
  unread: number;
}

const MOST_ENTRIES = 1_000;

/** Everything that is stored, in one file, or in several where one would be too large. */
export async function save(stored: Stored, progress: (done: number, all: number) => void): Promise<Saved> {
  const jobs = await stored.jobs();
  const blobs = await stored.blobs();
  const files: File[] = [];
  let zip = new Zip();
  let unread = 0;
  const close = (): void => {
    files.push(zip.file(`asfound-rescue-${files.length + 1}.zip`));
    zip = new Zip();
  };
  const attempt = async (work: () => Promise<void>): Promise<void> => {
    // One piece that cannot be read must not hold back all others.
    await work().catch(() => unread++);
  };
  zip.add('READ ME.txt', new TextEncoder().encode(words.readMe));
  zip.add('jobs.json', new TextEncoder().encode(JSON.stringify(jobs.map(({ id, name }) => ({ id, name })), null, 2)));
  for (const job of jobs) unread += await saveJob(stored, zip, job, jobs.length > 1 ? `${job.id}/` : '');
  for (const [job, name] of await stored.quarantined()) {
    await attempt(async () => zip.add(`quarantine/${job}-${name.replace(':', '-')}`, new Uint8Array((await stored.bytes('quarantine', [job, name])).bytes)));
  }
  let done = 0;
  for (const [hash, pieces] of blobs) {
    if (zip.isFull) close();
    await attempt(() => saveBlob(stored, zip, hash, pieces));
    progress(++done, blobs.size);
  }
  if (!zip.isEmpty) close();
  return { files, unread };
}

async function saveJob(stored: Stored, zip: Zip, job: Job, folder: string): Promise<number> {
  let unread = 0;
  for (const name of job.chunks) {
    const found = await stored.bytes('chunk', [job.id, name]).catch(() => void unread++);
    if (found) zip.add(`${folder}chunks/${name}.chunk`, new Uint8Array(found.bytes));
  }
  for (let from = 0; from < job.entries.length; from += MOST_ENTRIES) {
    const entries: Uint8Array<ArrayBuffer>[] = [];
    for (const [replica, seq] of job.entries.slice(from, from + MOST_ENTRIES)) {
      const found = await stored.bytes('tail', [job.id, replica, seq]).catch(() => void unread++);
      if (found) entries.push(new Uint8Array(found.bytes));
    }
    const { name, bytes } = chunkOf(entries);
    zip.add(`${folder}chunks/${name}.chunk`, bytes);
  }
  return unread;
}

async function saveBlob(stored: Stored, zip: Zip, hash: string, pieces: number): Promise<void> {
  const parts: ArrayBuffer[] = [];
  let type = '';
  for (let piece = 0; piece < pieces; piece++) {
    const found = await stored.bytes('photo', [hash, piece]);
    parts.push(found.bytes);
    type ||= found.type ?? '';
  }
  zip.add(`photos/${hash}.${ending(type)}`, new Uint8Array(await new Blob(parts).arrayBuffer()));
}

function ending(type: string): string {
  const plain = type.split(';')[0] ?? '';
  const known: Record<string, string> = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp', 'image/heic': 'heic', 'audio/webm': 'webm', 'audio/mp4': 'm4a', 'audio/ogg': 'ogg' };
  return known[plain] ?? 'bin';
}
