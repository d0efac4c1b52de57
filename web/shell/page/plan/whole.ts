import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { HeavyQuery, PlanQuery, PlanView } from '../../bridge/protocol';
import { today } from '../today';

/** How long entries may still arrive before it is worked out again. */
const SETTLE = 500;
/** A first answer at once, a better one after it. */
const STEPS = [20, 600] as const;

/** The plan of the whole job, worked out beside the screen: roughly at once, then better; and again when entries arrive. */
export class Whole implements ReactiveController {
  view: PlanView | undefined;
  working = false;
  failed = false;
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private asking: AbortController | undefined;

  constructor(private readonly host: ReactiveControllerHost, private readonly turned: () => Omit<PlanQuery, 'today' | 'nodes'>) {
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.soon);
    void this.ask();
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.soon);
    clearTimeout(this.waiting);
    this.asking?.abort();
  }

  readonly soon = (): void => {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => { void this.ask(); }, SETTLE);
  };

  private async ask(): Promise<void> {
    this.asking?.abort();
    const asking = new AbortController();
    this.asking = asking;
    [this.working, this.failed] = [true, false];
    this.host.requestUpdate();
    try {
      for (const nodes of STEPS) {
        const query = { ask: 'plan', ...this.turned(), today: today(), nodes } as HeavyQuery;
        const answer = await desk.weigh(query, asking.signal);
        if (asking.signal.aborted) return;
        if (answer.view === 'plan') this.view = answer;
        this.host.requestUpdate();
        if (answer.view !== 'plan' || answer.proof === 'best' || answer.proof === 'nothing-fits') break;
      }
    } catch {
      if (asking.signal.aborted) return;
      this.failed = true;
    }
    this.working = false;
    this.host.requestUpdate();
  }
}
