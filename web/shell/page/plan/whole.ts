import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { HeavyQuery, PlanQuery, PlanView, Reckoned } from '../../bridge/protocol';
import { today } from '../today';

/** How long entries may still arrive, or a slider move, before it is worked out again. */
const SETTLE = 400;
/** As many steps are made at most. */
const MOST_STEPS = 50_000;
/** After so long nobody waits for a proof any more: what is found by then stands, and says how good it is. */
const LONG_ENOUGH = 60_000;

/** The plan of the whole job, worked out beside the screen: roughly at once, then better; and again when entries arrive. */
export class Whole implements ReactiveController {
  view: PlanView | undefined;
  /** What `view` answers. */
  answers: PlanQuery = {};
  working = false;
  failed = false;
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private enough: ReturnType<typeof setTimeout> | undefined;
  private asking: AbortController | undefined;

  constructor(private readonly host: ReactiveControllerHost, private readonly turned: () => PlanQuery) {
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.soon);
    void this.ask();
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.soon);
    clearTimeout(this.waiting);
    this.end();
  }

  readonly soon = (): void => {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => { void this.ask(); }, SETTLE);
  };

  /** What is found stands as it is. */
  readonly stop = (): void => {
    this.end();
    this.working = false;
    this.host.requestUpdate();
  };

  private end(): void {
    clearTimeout(this.enough);
    this.asking?.abort();
  }

  private async ask(): Promise<void> {
    this.end();
    const asking = new AbortController();
    this.asking = asking;
    [this.working, this.failed] = [true, false];
    this.enough = setTimeout(this.stop, LONG_ENOUGH);
    this.host.requestUpdate();
    const turned = this.turned();
    const show = (answer: Reckoned): void => {
      if (asking.signal.aborted || answer.view !== 'plan') return;
      [this.view, this.answers] = [answer, turned];
      this.host.requestUpdate();
    };
    try {
      const query: HeavyQuery = { ask: 'plan', ...turned, today: today(), nodes: MOST_STEPS };
      show(await desk.weigh(query, asking.signal, show));
    } catch {
      if (asking.signal.aborted) return;
      this.failed = true;
    }
    clearTimeout(this.enough);
    this.working = false;
    this.host.requestUpdate();
  }
}
