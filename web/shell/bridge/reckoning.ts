import type { NamedBytes, ReckonCalls, ReckonNews, ReckonQuestion } from './calls.ts';
import type { Progress } from './job-file.ts';
import { Line } from './line.ts';

interface Options {
  progress?: Progress | undefined;
  signal?: AbortSignal | undefined;
}

type ReckonLine = Line<ReckonCalls, ReckonNews>;

/**
 * Heavy questions, each in a worker of its own that may be ended at any moment:
 * nothing here can delay a tick. One worker is kept warm for the next question.
 */
export class Reckoning {
  readonly #chunks: () => Promise<NamedBytes[]>;
  #warm: { line: ReckonLine; heard: { progress?: Progress | undefined } } | undefined;

  constructor(chunks: () => Promise<NamedBytes[]>) {
    this.#chunks = chunks;
  }

  async ask(question: ReckonQuestion, { progress, signal }: Options): Promise<unknown> {
    signal?.throwIfAborted();
    const chunks = question.ask === 'job-file' || question.ask === 'list' ? await this.#chunks() : [];
    signal?.throwIfAborted();
    const one = this.#warm ?? newLine();
    this.#warm = undefined;
    one.heard.progress = progress;
    const stop = (): void => one.line.end({ code: 'stopped', detail: 'stopped by the person' });
    signal?.addEventListener('abort', stop);
    try {
      const answer = await one.line.call('reckon', question, chunks);
      this.#warm = one;
      return answer;
    } catch (error) {
      signal?.throwIfAborted();
      one.line.end({ code: 'stopped', detail: String(error) });
      throw error;
    } finally {
      signal?.removeEventListener('abort', stop);
      one.heard.progress = undefined;
    }
  }
}

function newLine(): { line: ReckonLine; heard: { progress?: Progress | undefined } } {
  const heard: { progress?: Progress | undefined } = {};
  const worker = new Worker(new URL('../reckon/worker.ts', import.meta.url), { type: 'module', name: 'reckon' });
  const line: ReckonLine = new Line(worker, (news: ReckonNews) => {
    if (news.news === 'progress') heard.progress?.(news.done, news.of);
    else line.end({ code: 'worker-trapped', detail: news.detail });
  });
  return { line, heard };
}
