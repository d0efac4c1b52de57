import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { HeavyQuery, Reckoned } from '../../bridge/protocol';

/** One heavy question that is asked when somebody wants to know, and once more when something of it changes. */
export class Asked<View extends Reckoned['view']> implements ReactiveController {
  view: Extract<Reckoned, { view: View }> | undefined;
  state: 'closed' | 'working' | 'done' | 'failed' = 'closed';
  private asking: AbortController | undefined;

  constructor(private readonly host: ReactiveControllerHost, private readonly name: View) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.asking?.abort();
    if (this.state === 'working') this.state = 'closed';
  }

  async ask(query: HeavyQuery): Promise<void> {
    this.asking?.abort();
    const asking = new AbortController();
    this.asking = asking;
    this.state = 'working';
    this.host.requestUpdate();
    try {
      const answer = await desk.weigh(query, asking.signal);
      if (asking.signal.aborted) return;
      this.view = answer.view === this.name ? (answer as Extract<Reckoned, { view: View }>) : undefined;
      this.state = 'done';
    } catch {
      if (asking.signal.aborted) return;
      this.state = 'failed';
    }
    this.host.requestUpdate();
  }
}
