// What crosses between the page and its workers: calls with their answers, and
// the news that a worker tells by itself. Types only; both sides compile alone.

import type { Day, EntryId, Hash, HeavyQuery, Id, Millis, PartsQuery, Problem, Query, Reckoned, Replica, Sent, TagsPaper, View } from './protocol.ts';

/** Why something was not done, as it comes from a worker. */
export interface Failure {
  code: string;
  detail: string;
}

export interface JobLine {
  id: Id;
  name: string;
  parts: number;
  photos: number;
  last: Millis;
}

/** Bytes that a command names as "$0", "$1" and so on. */
export interface Beside {
  bytes: ArrayBuffer;
  media_type: string;
}

/** What a command came to, as the record worker says it. */
export interface Recorded {
  ok: boolean;
  problems: Problem[];
  entry?: string;
  job?: Id;
  trouble?: Failure;
  touched: Id[];
}

export interface TypedBytes {
  media_type: string;
  bytes: Uint8Array<ArrayBuffer>;
}

export interface NamedBytes {
  name: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** The record worker's calls. */
export interface RecordCalls {
  /** Answers once the wasm is there. */
  load(): void;
  /** Opens the database. With `faults`, the hooks of record/faults.ts are loaded first, and these applied. */
  start(faults: string[] | undefined): { replica: Replica };
  jobs(): JobLine[];
  begin(job: Id): void;
  open(job: Id): Recorded;
  /** Refused when this job is not the open one. */
  command(job: Id, sent: Sent, beside: Beside[]): Recorded;
  ask(query: Query): View;
  catchUp(): Id[];
  bringInBlob(name: Hash, bytes: TypedBytes): boolean;
  bringInChunk(job: Id, chunk: NamedBytes): Id[];
  thumb(of: Hash): TypedBytes | undefined;
  view(of: Hash): TypedBytes | undefined;
  photo(of: Hash): TypedBytes | undefined;
  probe(): void;
  fault(fault: string, on: boolean): void;
}

/** What the record worker tells without being asked. */
export type RecordNews =
  | { news: 'changed'; job: Id; ids: Id[] }
  | { news: 'derived'; hash: Hash }
  | { news: 'trapped'; detail: string };

/** A list and its form. */
export type ListKind = `${'parts' | 'to-buy' | 'to-send'}-${'csv' | 'html'}`;

/** What can be asked of the reckoning worker. It reads the job from the database by itself. */
export type ReckonQuestion =
  | { ask: 'busy'; seconds: number }
  | { ask: 'job-file'; job: Id; name: string; words: unknown }
  | { ask: 'read-job-file'; file: File }
  | { ask: 'weigh'; job: Id; query: HeavyQuery }
  /** Sheets of tags: a `File`, or with `view` the first one as it will be printed, a `TagSheetView`. */
  | { ask: 'tags'; job: Id; name: string; paper: TagsPaper; view?: boolean; words: unknown }
  | { ask: 'wall-sheet'; job: Id; name: string; assembly: Id; called: string; today?: Day; words: unknown }
  | { ask: 'list'; kind: ListKind; job: Id; name: string; query: PartsQuery; today?: Day; words: unknown };

/** A job file on its way out. */
export interface JobFileMade {
  file: File;
  /** Photos and sounds that the record names and that are not in it: missing here, or damaged. */
  missing: number;
  /** The entries that are in it: of each device those up to this one. */
  held: EntryId[];
}

/** What lies in a job file, in the order in which it is to be brought in. */
export interface JobFileContents {
  job?: Id;
  members: { index: number; kind: 'chunk' | 'blob'; hash: Hash; media_type: string }[];
}

/** The reckoning worker's calls. */
export interface ReckonCalls {
  reckon(question: ReckonQuestion): unknown;
  openJobFile(file: File): JobFileContents;
  readMember(index: number): Uint8Array<ArrayBuffer> | undefined;
  /** The codes of the tags in one frame of a camera: luminance, one byte a pixel, or RGBA as `ImageData` has it. */
  readFrame(pixels: ArrayBuffer, width: number, height: number): string[];
}

export type ReckonNews = { news: 'progress'; done: number; of: number } | { news: 'so-far'; answer: Reckoned } | { news: 'trapped'; detail: string };

/** One call on its way to a worker. */
export type Call<Calls> = { [Name in keyof Calls]: Calls[Name] extends (...args: infer Args) => unknown ? { call: number; name: Name; args: Args } : never }[keyof Calls];

/** One answer on its way back. `safe` is how many entries of the open job are stored. */
export type Reply = { call: number; value: unknown; safe: number } | { call: number; failure: Failure; safe: number };

/** The calls of a worker as it carries them out. */
export type Carried<Calls> = { [Name in keyof Calls]: Calls[Name] extends (...args: infer Args) => infer Result ? (...args: Args) => Promise<Result> : never };
