// The reckoning worker: heavy questions over a copy of the job. It may be ended
// at any moment and writes nothing that anybody would miss.

import type { Call, Failure, NamedBytes, ReckonCalls, ReckonNews, ReckonQuestion, Reply } from '../bridge/calls.ts';
import init, { busy } from '../pkg/reckon/reckon.js';
import wasm from '../pkg/reckon/reckon_bg.wasm?url';

const loaded = init({ module_or_path: wasm });

async function reckon(question: ReckonQuestion, _chunks: NamedBytes[]): Promise<unknown> {
  await loaded;
  switch (question.ask) {
    case 'busy':
      return busy(question.seconds);
    default:
      throw new Error(`not yet: ${question.ask}`);
  }
}

self.addEventListener('message', ({ data }: MessageEvent<Call<ReckonCalls>>) => void carryOut(data));

async function carryOut({ call, args }: Call<ReckonCalls>): Promise<void> {
  try {
    answer({ call, value: await reckon(...args), safe: 0 });
  } catch (error) {
    if (error instanceof WebAssembly.RuntimeError) return tell({ news: 'trapped', detail: String(error) });
    answer({ call, failure: failureOf(error), safe: 0 });
  }
}

function failureOf(error: unknown): Failure {
  return { code: 'reckoning-failed', detail: error instanceof Error ? error.message : String(error) };
}

function answer(reply: Reply): void {
  self.postMessage(reply);
}

function tell(news: ReckonNews): void {
  self.postMessage(news);
}
