import type { JobFileContents, ReckonCalls, ReckonNews, ReckonQuestion } from './calls.ts';
import type { Progress } from './job-file.ts';
import { Line } from './line.ts';
import type { Reckoned } from './protocol.ts';

interface Options {
  progress?: Progress | undefined;
  /** Hears of an answer while it becomes better. */
  soFar?: ((answer: Reckoned) => void) | undefined;
  signal?: AbortSignal | undefined;
}

interface Reckoner {
  line: Line<ReckonCalls, ReckonNews>;
  progress: Progress | undefined;
  soFar: ((answer: Reckoned) => void) | undefined;
}

/**
 * Heavy questions, each in a worker of its own that may be ended at any moment:
 * nothing here can delay a tick. One worker is kept warm for the next question.
 */
export class Reckoning {
  #warm: Reckoner | undefined;

  ask(question: ReckonQuestion, { progress, soFar, signal }: Options): Promise<unknown> {
    return this.#with((reckoner) => {
      [reckoner.progress, reckoner.soFar] = [progress, soFar];
      return reckoner.line.call('reckon', question);
    }, signal);
  }

  /** The codes of the tags in a frame; its pixels are given away. */
  readFrame(pixels: ArrayBuffer, width: number, height: number): Promise<string[]> {
    return this.#with(({ line }) => line.handOver([pixels], 'readFrame', pixels, width, height));
  }

  /** Opens a job file for as long as the work takes; `read` gives a member's bytes, or nothing when they are damaged. */
  withJobFile(file: File, work: (contents: JobFileContents, read: (index: number) => Promise<Uint8Array<ArrayBuffer> | undefined>) => Promise<void>): Promise<void> {
    return this.#with(async ({ line }) => work(await line.call('openJobFile', file), (index) => line.call('readMember', index)));
  }

  async #with<T>(work: (reckoner: Reckoner) => Promise<T>, signal?: AbortSignal): Promise<T> {
    signal?.throwIfAborted();
    const reckoner = this.#warm ?? newReckoner();
    this.#warm = undefined;
    const stop = (): void => reckoner.line.end({ code: 'stopped', detail: 'stopped by the person' });
    signal?.addEventListener('abort', stop);
    try {
      const answer = await work(reckoner);
      // Of two questions that ran at once one worker is enough to keep.
      if (this.#warm) reckoner.line.end({ code: 'stopped', detail: 'not needed' });
      else this.#warm = reckoner;
      return answer;
    } catch (error) {
      signal?.throwIfAborted();
      reckoner.line.end({ code: 'stopped', detail: String(error) });
      throw error;
    } finally {
      signal?.removeEventListener('abort', stop);
      [reckoner.progress, reckoner.soFar] = [undefined, undefined];
    }
  }
}

function newReckoner(): Reckoner {
  const worker = new Worker(new URL('../reckon/worker.ts', import.meta.url), { type: 'module', name: 'reckon' });
  const reckoner: Reckoner = {
    progress: undefined,
    soFar: undefined,
    line: new Line(worker, (news: ReckonNews) => {
      if (news.news === 'progress') reckoner.progress?.(news.done, news.of);
      else if (news.news === 'so-far') reckoner.soFar?.(news.answer);
      else reckoner.line.end({ code: 'worker-trapped', detail: news.detail });
    }),
  };
  return reckoner;
}
