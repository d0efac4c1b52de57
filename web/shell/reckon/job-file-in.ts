import { type JobFileContents, JobFileIn } from '../pkg/reckon/reckon.js';
import type { DryRun } from '../bridge/protocol.ts';
import type { Database } from './database.ts';

/** A job file that is being looked at. What is no job file is thrown as a problem. */
export class JobFile {
  readonly #open: JobFileIn;
  readonly contents: JobFileContents;

  constructor(file: File) {
    const reader = new FileReaderSync();
    this.#open = JobFileIn.open(file.size, (from, length) => new Uint8Array(reader.readAsArrayBuffer(file.slice(from, from + length))));
    this.contents = this.#open.contents();
  }

  async dryRun(database: Database): Promise<DryRun> {
    return this.#open.dryRun(await database.copy(this.contents.job ?? null), await database.blobs());
  }

  read(index: number): Uint8Array<ArrayBuffer> | undefined {
    const bytes = this.#open.read(index);
    return bytes && new Uint8Array(bytes);
  }
}
