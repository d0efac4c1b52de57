import type { Carried, Failure, Reply } from './calls.ts';

/** The worker is gone and will not answer: ended on purpose, trapped, or failed to load. */
export class LineEnded extends Error {
  readonly failure: Failure;

  constructor(failure: Failure) {
    super(failure.detail);
    this.failure = failure;
  }
}

/** A call that the worker carried out and that failed there. */
export class CallFailed extends Error {
  readonly failure: Failure;

  constructor(failure: Failure) {
    super(`${failure.code}: ${failure.detail}`);
    this.failure = failure;
  }
}

interface Waiting {
  resolve: (value: unknown) => void;
  reject: (error: Error) => void;
}

type Heard<News> = Reply | News;

/**
 * A line to one worker. Every call settles: with its answer, or because the line
 * ended. (A ready-made proxy waits for ever when its worker dies.)
 */
export class Line<Calls, News extends { news: string }> {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  #next = 1;
  #ended: Failure | undefined;
  /** Entries of the open job that are stored, as the worker said last. */
  safe = 0;

  constructor(worker: Worker, heard: (news: News) => void) {
    this.#worker = worker;
    worker.addEventListener('message', ({ data }: MessageEvent<Heard<News>>) => {
      if ('call' in data) this.#settle(data);
      else heard(data);
    });
    // A worker whose file cannot be loaded says nothing but this.
    worker.addEventListener('error', (event) => {
      if (!event.message) this.end({ code: 'worker-trapped', detail: 'the worker could not be loaded' });
    });
  }

  call<Name extends keyof Calls & keyof Carried<Calls>>(
    name: Name,
    ...args: Calls[Name] extends (...given: infer Args) => unknown ? Args : never
  ): Promise<Calls[Name] extends (...given: never[]) => infer Result ? Result : never> {
    return this.handOver([], name, ...args);
  }

  /** A call that gives what is `moved` away instead of copying it. */
  handOver<Name extends keyof Calls & keyof Carried<Calls>>(
    moved: Transferable[],
    name: Name,
    ...args: Calls[Name] extends (...given: infer Args) => unknown ? Args : never
  ): Promise<Calls[Name] extends (...given: never[]) => infer Result ? Result : never> {
    return new Promise((resolve, reject) => {
      if (this.#ended) return reject(new LineEnded(this.#ended));
      const call = this.#next++;
      this.#waiting.set(call, { resolve: resolve as Waiting['resolve'], reject });
      this.#worker.postMessage({ call, name, args }, moved);
    });
  }

  /** Ends the worker, at once and whatever it does. */
  end(why: Failure): void {
    if (this.#ended) return;
    this.#ended = why;
    this.#worker.terminate();
    for (const { reject } of this.#waiting.values()) reject(new LineEnded(why));
    this.#waiting.clear();
  }

  #settle(reply: Reply): void {
    const waiting = this.#waiting.get(reply.call);
    this.#waiting.delete(reply.call);
    this.safe = reply.safe;
    if ('failure' in reply) waiting?.reject(new CallFailed(reply.failure));
    else waiting?.resolve(reply.value);
  }
}

/** Answers within so many milliseconds, or fails with this. */
export async function within<T>(ms: number, late: Failure, work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const alarm = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new CallFailed(late)), ms);
  });
  try {
    return await Promise.race([work, alarm]);
  } finally {
    clearTimeout(timer);
  }
}
