// The desk at work: one open job, commands on their way, and what is wrong.

import type { Beside, Failure, JobFileMade, JobLine, ListKind, ReckonQuestion, Recorded, RecordNews, TypedBytes } from './calls.ts';
import type { Answer, DeskEvents, DeskWork } from './desk.ts';
import { bringIn, type DryRun, type MergeReport, type Progress } from './job-file.ts';
import { newId } from './id.ts';
import { askToPersist, keeping, type Keeping } from './keeping.ts';
import { CallFailed } from './line.ts';
import type { Command, Day, HeavyQuery, PartsQuery, Query, Reckoned, TagSheetView, TagsPaper, View } from './protocol.ts';
import { Reckoning } from './reckoning.ts';
import { StoreLine } from './store-line.ts';
import { troubleOf, type StoreTrouble } from './trouble.ts';

export class Office extends EventTarget implements DeskWork {
  readonly #store: StoreLine;
  readonly #reckoning: Reckoning;
  #job: string | null = null;
  #waiting = 0;
  #trouble: StoreTrouble | null = null;
  /** What was found damaged in the open job: it stays a trouble whatever else goes well. */
  #damage: Failure | null = null;

  constructor(withFaults: boolean) {
    super();
    this.#store = new StoreLine(withFaults, {
      news: (news) => this.#heard(news),
      trouble: (failure) => this.#tellTrouble(failure),
      ready: () => this.#tellTrouble(null),
    });
    this.#reckoning = new Reckoning();
    if (withFaults) Object.assign(globalThis, { desk: this });
    for (const event of ['focus', 'pageshow'] as const) addEventListener(event, () => this.#looked());
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && this.#looked());
    // Out of a freeze nothing else need happen: the window may have been in sight all the time.
    document.addEventListener('resume', () => this.#looked());
  }

  jobs(): Promise<JobLine[]> {
    return this.#store.call('jobs');
  }

  current(): string | null {
    return this.#job;
  }

  trouble(): StoreTrouble | null {
    return this.#trouble;
  }

  async start(name: string, vehicle?: { name: string }): Promise<Answer> {
    const job = newId();
    const made = { do: 'create', id: newId(), kind: 'vehicle', changes: vehicle ? [{ name: vehicle.name }] : [] } satisfies Command;
    const first = { do: 'create', id: job, kind: 'job', changes: [{ name }] } satisfies Command;
    const before = this.#job;
    this.#opened(job);
    return this.#answered(async () => {
      await this.#store.call('begin', job);
      return this.#store.call('command', job, { id: newId(), command: { do: 'all', commands: [first, made] } }, []);
    }).then(async (answer) => {
      if (!answer.ok) await this.#back(before);
      return answer;
    });
  }

  /** The job that was open before one that could not be started: the worker is to have it open, too. */
  async #back(job: string | null): Promise<void> {
    this.#opened(job);
    // What is wrong is told already; without an answer the worker refuses commands for a job it does not have open.
    if (job !== null) await this.#store.call('open', job).catch(() => undefined);
  }

  async open(job: string): Promise<Answer> {
    const answer = await this.#answered(() => this.#store.call('open', job));
    if (answer.ok) this.#opened(job);
    this.#damage = answer.trouble?.code === 'chunk-damaged' ? { code: 'chunk-damaged', detail: answer.trouble.detail ?? '' } : null;
    this.#tellTrouble(null);
    return answer;
  }

  async command(command: Command, beside: Beside[] = [], id = newId()): Promise<Answer> {
    const job = this.#job;
    this.#counted(1);
    try {
      const answer = await this.#answered(() => this.#store.call('command', job ?? '', { id, command }, beside));
      if (answer.ok) askToPersist();
      return answer;
    } finally {
      this.#counted(-1);
    }
  }

  ask(query: Query): Promise<View> {
    return this.#store.call('ask', query);
  }

  async reckon<T>(question: ReckonQuestion, signal?: AbortSignal): Promise<T> {
    return (await this.#reckoning.ask(question, { signal })) as T;
  }

  async weigh(query: HeavyQuery, signal?: AbortSignal, soFar?: (answer: Reckoned) => void): Promise<Reckoned> {
    if (this.#job === null) return { view: 'nothing' };
    return (await this.#reckoning.ask({ ask: 'weigh', job: this.#job, query }, { signal, soFar })) as Reckoned;
  }

  async thumb(hash: string): Promise<Blob | null> {
    return blobOf(await this.#store.call('thumb', hash));
  }

  async view(hash: string): Promise<Blob | null> {
    return blobOf((await this.#store.call('view', hash)) ?? (await this.#store.call('photo', hash)));
  }

  async photo(hash: string): Promise<Blob | null> {
    return blobOf(await this.#store.call('photo', hash));
  }

  async prepareJobFile(progress?: Progress, words?: unknown, signal?: AbortSignal): Promise<JobFileMade> {
    return (await this.#reckoning.ask({ ask: 'job-file', ...(await this.#openJob()), words }, { progress, signal })) as JobFileMade;
  }

  async readJobFile(file: File, signal?: AbortSignal): Promise<DryRun> {
    return (await this.#reckoning.ask({ ask: 'read-job-file', file }, { signal })) as DryRun;
  }

  async bringIn(file: File, dry: DryRun, progress?: Progress): Promise<MergeReport> {
    const report = await bringIn(this.#store, this.#reckoning, file, dry, progress);
    if (report.touched.length > 0) this.#tell('changed', { ids: report.touched, job: report.job });
    return report;
  }

  async prepareWallSheet(assembly: string, called: string, today?: Day, words?: unknown): Promise<File> {
    return (await this.#reckoning.ask({ ask: 'wall-sheet', ...(await this.#openJob()), assembly, called, ...(today && { today }), words }, {})) as File;
  }

  async prepareList(kind: ListKind, query: PartsQuery, today?: Day, words?: unknown): Promise<File> {
    return (await this.#reckoning.ask({ ask: 'list', ...(await this.#openJob()), kind, query, ...(today && { today }), words }, {})) as File;
  }

  async prepareTags(paper: TagsPaper, words?: unknown): Promise<File> {
    return (await this.#reckoning.ask({ ask: 'tags', ...(await this.#openJob()), paper, words }, {})) as File;
  }

  async lookAtTags(paper: TagsPaper, words?: unknown): Promise<TagSheetView> {
    return (await this.#reckoning.ask({ ask: 'tags', ...(await this.#openJob()), paper, view: true, words }, {})) as TagSheetView;
  }

  readFrame(pixels: ArrayBuffer, width: number, height: number): Promise<string[]> {
    return this.#reckoning.readFrame(pixels, width, height);
  }

  async keeping(): Promise<Keeping> {
    return keeping(await this.ask({ ask: 'head' }));
  }

  async lookAgain(): Promise<void> {
    await this.#store.probe();
    const ids = await this.#store.call('catchUp');
    if (ids.length > 0 && this.#job) this.#tell('changed', { ids, job: this.#job });
  }

  /** For the journeys; see record/faults.ts. */
  fault(name: string, on: boolean): Promise<void> {
    return this.#store.fault(name, on);
  }

  async #openJob(): Promise<{ job: string; name: string }> {
    if (this.#job === null) throw new Error('no job is open');
    const head = await this.ask({ ask: 'head' });
    return { job: this.#job, name: head.view === 'head' ? (head.job.values.name ?? '') : '' };
  }

  #opened(job: string | null): void {
    this.#job = job;
    this.#store.job = job;
  }

  async #answered(work: () => Promise<Recorded>): Promise<Answer> {
    try {
      const { touched, trouble, ...recorded } = await work();
      this.#tellTrouble(trouble ?? null);
      if (recorded.ok && recorded.job && touched.length > 0) this.#tell('changed', { ids: touched, job: recorded.job });
      return trouble ? { ...recorded, trouble: this.#troubleOf(trouble) } : recorded;
    } catch (error) {
      const failure = error instanceof CallFailed ? error.failure : { code: 'read-failed', detail: String(error) };
      this.#tellTrouble(failure);
      return { ok: false, problems: [], trouble: this.#troubleOf(failure) };
    }
  }

  #heard(news: RecordNews): void {
    if (news.news === 'changed' && news.job === this.#job) this.#tell('changed', { ids: news.ids, job: news.job });
    if (news.news === 'derived') this.#tell('derived', { hash: news.hash });
  }

  #looked(): void {
    // What is wrong is told as a trouble; nobody waits for this.
    this.lookAgain().catch(() => undefined);
  }

  #troubleOf(failure: Failure): StoreTrouble {
    return troubleOf(failure, this.#store.safe, this.#waiting);
  }

  #tellTrouble(now: Failure | null): void {
    const failure = now ?? this.#damage;
    const before = this.#trouble;
    this.#trouble = failure && this.#troubleOf(failure);
    if (before?.code === this.#trouble?.code && before?.safe === this.#trouble?.safe && before?.waiting === this.#trouble?.waiting) return;
    this.#tell('trouble', this.#trouble);
  }

  #counted(change: number): void {
    this.#waiting += change;
    this.#tell('saving', { waiting: this.#waiting });
  }

  #tell<Name extends keyof DeskEvents>(name: Name, detail: DeskEvents[Name]['detail']): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

function blobOf(bytes: TypedBytes | undefined): Blob | null {
  return bytes ? new Blob([bytes.bytes], { type: bytes.media_type }) : null;
}
