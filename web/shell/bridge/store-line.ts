// The line to the record worker, kept up: opened with a watch on it, replaced
// when it ends or stops answering, with the open job opened again.

import type { Failure, RecordCalls, RecordNews } from './calls.ts';
import { CallFailed, Line, LineEnded, within } from './line.ts';

/** A store that does not answer within this is in trouble, and the person is told. */
const PROBE_MS = 900;
const OPEN_MS = 1_500;
/** One that still does not after this is replaced. */
const GRACE_MS = 2_000;
/** As is one that does not open within this; each attempt is given more time. */
const OPEN_LIMIT_MS = 3_500;
const NO_ANSWER: Failure = { code: 'connection-lost', detail: 'no answer' };
/** A command may take this long before anybody asks whether the store still answers. */
const PATIENCE_MS = 500;
/** One that takes longer, although the store answers, is given to a new worker. */
const LIMIT_MS = 15_000;
/** A command that ends so many workers is given up. */
const MOST_TRAPS = 2;
const PAUSES_MS = [0, 500, 1_000, 2_000, 5_000];

/** Failures that another attempt does not mend. */
const final = new Set(['newer-database', 'closed-elsewhere', 'private-window']);

export interface StoreLineEvents {
  news(news: RecordNews): void;
  trouble(failure: Failure): void;
  /** Opened, and again whenever a new worker has taken over. */
  ready(): void;
}

export class StoreLine {
  readonly #events: StoreLineEvents;
  readonly #faults: Set<string> | undefined;
  #line: Line<RecordCalls, RecordNews> | undefined;
  #ready: Promise<Line<RecordCalls, RecordNews>>;
  #job: string | null = null;
  #safe = 0;

  constructor(withFaults: boolean, events: StoreLineEvents) {
    this.#events = events;
    this.#faults = withFaults ? new Set() : undefined;
    this.#ready = this.#opening();
  }

  /** Entries of the open job that are stored. */
  get safe(): number {
    return this.#line?.safe ?? this.#safe;
  }

  /** The job to be open, also in a worker that takes over. */
  set job(job: string | null) {
    this.#job = job;
  }

  /** Does it, with as many workers as it takes; only what is safe to do twice. */
  async call<Name extends keyof RecordCalls>(name: Name, ...args: Parameters<RecordCalls[Name]>): Promise<ReturnType<RecordCalls[Name]>> {
    for (let traps = 0; ; ) {
      const line = await this.#ready;
      try {
        const work = line.call(name, ...(args as never)) as Promise<ReturnType<RecordCalls[Name]>>;
        const value = await this.#watched(line, work, name !== 'open');
        const lost = lostConnection(value);
        if (!lost) return value;
        await this.#replaced(line, lost);
      } catch (error) {
        const failure = failureThatMends(error);
        if (!failure) throw error;
        if (failure.code === 'worker-trapped' && ++traps === MOST_TRAPS) throw new CallFailed(failure);
        await this.#replaced(line, failure);
      }
    }
  }

  /** Whether the store answers; if not, another worker takes over. */
  async probe(): Promise<void> {
    const line = await this.#ready;
    try {
      await within(PROBE_MS, NO_ANSWER, line.call('probe'));
    } catch {
      // Asked when the person comes back: a connection that died in their absence is replaced at once.
      await this.#replaced(line, NO_ANSWER);
    }
  }

  /** For the journeys; see record/faults.ts. */
  async fault(fault: string, on: boolean): Promise<void> {
    if (!this.#faults) throw new Error('the address does not ask for faults');
    const lasting = !['transaction-aborted', 'newer-database', 'chunk-damaged', 'worker-trapped', 'end-before-answer'].includes(fault);
    if (on && lasting) this.#faults.add(fault);
    else this.#faults.delete(fault);
    await this.#line?.call('fault', fault, on);
  }

  /** With `replace`, a store that does not answer meanwhile is replaced; loading a large job may keep it busy instead. */
  async #watched<T>(line: Line<RecordCalls, RecordNews>, work: Promise<T>, replace: boolean): Promise<T> {
    const watch = setTimeout(() => void this.#look(line, replace).catch(() => undefined), PATIENCE_MS);
    const late = { code: 'connection-lost', detail: 'no end' };
    const limit = setTimeout(() => void this.#replaced(line, late).catch(() => undefined), LIMIT_MS);
    try {
      return await work;
    } finally {
      clearTimeout(watch);
      clearTimeout(limit);
    }
  }

  /** Told soon, replaced later: a slow device is not to lose its worker again and again. */
  async #look(line: Line<RecordCalls, RecordNews>, replace: boolean): Promise<void> {
    const probe = line.call('probe') as Promise<void>;
    try {
      await within(PROBE_MS, NO_ANSWER, probe);
    } catch (error) {
      this.#events.trouble(error instanceof CallFailed ? error.failure : NO_ANSWER);
      await this.#lookLonger(line, replace, probe);
    }
  }

  async #lookLonger(line: Line<RecordCalls, RecordNews>, replace: boolean, probe: Promise<void>): Promise<void> {
    try {
      await within(GRACE_MS, NO_ANSWER, probe);
      if (this.#line === line) this.#events.ready();
    } catch (error) {
      if (replace) await this.#replaced(line, error instanceof CallFailed ? error.failure : NO_ANSWER);
    }
  }

  /** Another worker takes over from this one, unless one already has. */
  async #replaced(line: Line<RecordCalls, RecordNews>, failure: Failure): Promise<void> {
    if (this.#line === line) {
      this.#safe = line.safe;
      this.#line = undefined;
      this.#events.trouble(failure);
      this.#ready = this.#opening();
    }
    line.end(failure);
    await this.#ready;
  }

  #opening(): Promise<Line<RecordCalls, RecordNews>> {
    const ready = this.#open();
    // Told as a trouble, and again to each who calls; nobody may be calling now.
    ready.catch(() => undefined);
    return ready;
  }

  async #open(): Promise<Line<RecordCalls, RecordNews>> {
    for (let attempt = 0; ; attempt++) {
      await new Promise((resolve) => setTimeout(resolve, PAUSES_MS[Math.min(attempt, PAUSES_MS.length - 1)]));
      const line = this.#newLine();
      try {
        await this.#begun(line, attempt);
        this.#line = line;
        this.#events.ready();
        return line;
      } catch (error) {
        const failure = error instanceof CallFailed || error instanceof LineEnded ? error.failure : { code: 'open-hung', detail: String(error) };
        line.end(failure);
        this.#events.trouble(failure);
        if (final.has(failure.code)) throw new CallFailed(failure);
      }
    }
  }

  #newLine(): Line<RecordCalls, RecordNews> {
    const worker = new Worker(new URL('../record/worker.ts', import.meta.url), { type: 'module', name: 'record' });
    const line: Line<RecordCalls, RecordNews> = new Line(worker, (news: RecordNews) => {
      if (news.news === 'trapped') void this.#trapped(line, news.detail);
      else this.#events.news(news);
    });
    return line;
  }

  async #begun(line: Line<RecordCalls, RecordNews>, attempt: number): Promise<void> {
    const faults = this.#faults && [...this.#faults];
    // The wasm is loaded first, which may take its time; opening may not.
    await line.call('load');
    const late = { code: 'open-hung', detail: 'opening does not answer' };
    const alarm = setTimeout(() => this.#events.trouble(late), OPEN_MS);
    try {
      await within(OPEN_LIMIT_MS * (attempt + 1), late, line.call('start', faults));
    } finally {
      clearTimeout(alarm);
    }
    if (this.#job === null) return;
    const opened = await within(LIMIT_MS, { code: 'open-hung', detail: 'loading does not answer' }, line.call('open', this.#job));
    if (!opened.ok) throw new CallFailed(opened.trouble ?? { code: 'read-failed', detail: 'the job does not open' });
  }

  async #trapped(line: Line<RecordCalls, RecordNews>, detail: string): Promise<void> {
    const failure = { code: 'worker-trapped', detail };
    if (this.#line === line) await this.#replaced(line, failure).catch(() => undefined);
    else line.end(failure);
  }
}

/** An answer that says that the connection is gone: another worker may find it again. */
function lostConnection(value: unknown): Failure | undefined {
  if (typeof value !== 'object' || value === null || !('trouble' in value)) return undefined;
  const trouble = value.trouble as Failure | undefined;
  return trouble?.code === 'connection-lost' ? trouble : undefined;
}

/** Why a call did not settle here, if another worker may do better. */
function failureThatMends(error: unknown): Failure | undefined {
  if (error instanceof LineEnded) return error.failure;
  return error instanceof CallFailed && error.failure.code === 'connection-lost' ? error.failure : undefined;
}
