import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../bridge/desk';
import type { Query, View } from '../bridge/protocol';
import { namesNothing } from './names-nothing';

export type ViewName = View['view'];
export type ViewOf<N extends ViewName> = Extract<View, { view: N }>;

let open = 0;

/** Whether anything that is shown still waits for its answer. */
export function isAsking(): boolean {
  return open > 0;
}

/**
 * A question that stays asked: the answer is in `view`, and is asked for again when entries arrive from here or another
 * window. An older answer never replaces a newer one, and the last good one stays on the screen while a new one is on its way.
 */
export class Live<N extends ViewName> implements ReactiveController {
  view: ViewOf<N> | undefined;
  /** What was asked about is not in this job. */
  nothing = false;

  private asked = 0;
  private waits = false;

  constructor(private readonly host: ReactiveControllerHost, private readonly name: N, private readonly query: () => Query | null) {
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.soon);
    this.soon();
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.soon);
  }

  /** Forgets the answer and asks anew: for another record. */
  anew(): void {
    this.view = undefined;
    this.nothing = false;
    this.soon();
  }

  /** Asks once more in this turn, however often it is called. */
  readonly soon = (): void => {
    if (this.waits) return;
    this.waits = true;
    queueMicrotask(() => {
      this.waits = false;
      void this.ask();
    });
  };

  private async ask(): Promise<void> {
    const query = this.query();
    if (!query) return;
    const turn = ++this.asked;
    if (namesNothing(query)) {
      [this.view, this.nothing] = [undefined, true];
      this.host.requestUpdate();
      return;
    }
    open += 1;
    try {
      const answer = await desk.ask(query);
      if (turn !== this.asked) return;
      this.nothing = answer.view === 'nothing';
      if (this.isWanted(answer)) this.view = answer;
      this.host.requestUpdate();
    } catch {
      // The desk tells of trouble by itself; what is on the screen stays.
    } finally {
      open -= 1;
    }
  }

  private isWanted(answer: View): answer is ViewOf<N> {
    return answer.view === this.name;
  }
}
