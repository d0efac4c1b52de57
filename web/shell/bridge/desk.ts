// What the page knows of the record: calls, answers and news. It holds no truth.

import type { Beside, JobFileMade, JobLine, ListKind, ReckonQuestion } from './calls.ts';
import type { Command, Day, HeavyQuery, Problem, PartsQuery, Query, Reckoned, TagSheetView, TagsPaper, View } from './protocol.ts';
import type { Keeping } from './keeping.ts';
import type { DryRun, MergeReport, Progress } from './job-file.ts';
import type { StoreTrouble } from './trouble.ts';
import { Office } from './office.ts';

export type { Beside, JobFileMade, JobLine, ReckonQuestion } from './calls.ts';
export type { Keeping } from './keeping.ts';
export type { DryRun, MergeReport, Progress } from './job-file.ts';
export type { StoreTrouble, TroubleCode } from './trouble.ts';
export { newId } from './id.ts';

/** What a command came to. `ok` means: stored, and read back. Nothing else may show a tick. */
export interface Answer {
  ok: boolean;
  problems: Problem[];
  entry?: string;
  job?: string;
  trouble?: StoreTrouble;
}

/** Events of the desk, by name, with what they carry in `detail`. */
export interface DeskEvents {
  /** Entries arrived, from here or from another window. */
  changed: CustomEvent<{ ids: string[]; job: string }>;
  /** Something is wrong with storing; null when it is over. */
  trouble: CustomEvent<StoreTrouble | null>;
  /** How many commands are not answered yet. */
  saving: CustomEvent<{ waiting: number }>;
  /** The smaller pictures of a photo are there. */
  derived: CustomEvent<{ hash: string }>;
}

export interface Desk extends EventTarget {
  addEventListener<Name extends keyof DeskEvents>(name: Name, heard: (event: DeskEvents[Name]) => void, options?: AddEventListenerOptions): void;
  addEventListener(name: string, heard: EventListenerOrEventListenerObject | null, options?: AddEventListenerOptions | boolean): void;
  removeEventListener<Name extends keyof DeskEvents>(name: Name, heard: (event: DeskEvents[Name]) => void): void;
  removeEventListener(name: string, heard: EventListenerOrEventListenerObject | null, options?: EventListenerOptions | boolean): void;
  /** All jobs, latest first, without opening them. */
  jobs(): Promise<JobLine[]>;
  /** A new job with its vehicle, opened. */
  start(name: string, vehicle?: { name: string }): Promise<Answer>;
  /** Loads a job. With damage in it everything sound is open all the same: `ok`, and a trouble. */
  open(job: string): Promise<Answer>;
  current(): string | null;
  /** Carries out a command; it waits over a restart of the worker. Give the same `id` to try the same command again. */
  command(command: Command, beside?: Beside[], id?: string): Promise<Answer>;
  ask(query: Query): Promise<View>;
  /** A heavy question. Aborting ends the worker at once. */
  reckon<T>(question: ReckonQuestion, signal?: AbortSignal): Promise<T>;
  /** Certainty of one part, or what is to be decided first, of the open job. Aborting ends the worker at once. */
  weigh(query: HeavyQuery, signal?: AbortSignal, soFar?: (answer: Reckoned) => void): Promise<Reckoned>;
  /** For lists; null while it is not made yet. */
  thumb(hash: string): Promise<Blob | null>;
  /** For the screen: at most 2560 pixels, or the photo as it came while that is not made yet. */
  view(hash: string): Promise<Blob | null>;
  /** As it came. */
  photo(hash: string): Promise<Blob | null>;
  prepareJobFile(progress?: Progress, words?: unknown, signal?: AbortSignal): Promise<JobFileMade>;
  readJobFile(file: File, signal?: AbortSignal): Promise<DryRun>;
  bringIn(file: File, dry: DryRun, progress?: Progress): Promise<MergeReport>;
  /** The steps of one assembly as a page for the wall; `called` stands in its file name. */
  prepareWallSheet(assembly: string, called: string, today?: Day, words?: unknown): Promise<File>;
  prepareList(kind: ListKind, query: PartsQuery, today?: Day, words?: unknown): Promise<File>;
  /** Sheets of tags as a PDF; what cannot be printed so is refused with the code of its problem. */
  prepareTags(paper: TagsPaper, words?: unknown): Promise<File>;
  /** The first of these sheets as it will be printed. */
  lookAtTags(paper: TagsPaper, words?: unknown): Promise<TagSheetView>;
  /**
   * The codes of the tags that are seen in one frame of a camera, sorted, each once, as they are printed without the hyphen
   * (`0147X`); none when there is none that can be read with certainty. The check character is right in each of them.
   *
   * `pixels` are one byte of luminance each, or the RGBA of an `ImageData` (`image.data.buffer`); they are given away, so that a
   * new buffer is needed for the next frame. Ask again once the answer is there: frames that wait only grow old. 640 × 480 is
   * enough. The answer takes some milliseconds; another heavy question at the same time does not delay it.
   */
  readFrame(pixels: ArrayBuffer, width: number, height: number): Promise<string[]>;
  keeping(): Promise<Keeping>;
  /** The trouble that there is now. */
  trouble(): StoreTrouble | null;
  /** Looks whether the store still answers, and at what other windows have stored. */
  lookAgain(): Promise<void>;
}

/** The desk without its events. */
export type DeskWork = Omit<Desk, keyof EventTarget>;

/** Starts the record worker. Once is enough: `desk` below is what it answers. */
export function connectDesk(): Desk {
  const office: DeskWork & EventTarget = new Office(new URLSearchParams(location.search).has('faults'));
  // The events it dispatches are those of DeskEvents, which no base class can say.
  return office as Desk;
}

export const desk: Desk = connectDesk();
