import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { PartLine, PartsGroup, PartsQuery, Sums } from '../../bridge/protocol';

const PAGE = 48;

/** What is known of the whole list without its rows. */
export interface Summary { total: number; found: number; groups: PartsGroup[]; sums: Sums }

/**
 * The rows of a list, asked for page by page as they come into sight. What is shown stays until the new answer is here;
 * an answer to an older question is dropped.
 */
export class PartRows implements ReactiveController {
  summary: Summary | undefined;
  failed = false;

  private pages = new Map<number, PartLine[]>();
  private asked = new Set<number>();
  private turn = 0;
  private answered = 0;
  private wanted: readonly [number, number] = [0, PAGE];

  constructor(private readonly host: ReactiveControllerHost, private readonly query: () => PartsQuery) {
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.anew);
    this.anew();
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.anew);
  }

  row(index: number): PartLine | undefined {
    return this.pages.get(Math.floor(index / PAGE))?.[index % PAGE];
  }

  /** The list is another one, or entries arrived. */
  readonly anew = (): void => {
    this.turn += 1;
    this.asked.clear();
    this.askFor(this.wanted);
  };

  /** These rows come into sight. */
  want(from: number, to: number): void {
    this.wanted = [from, to];
    this.askFor(this.wanted);
  }

  private askFor([from, to]: readonly [number, number]): void {
    for (let page = Math.floor(Math.max(0, from) / PAGE); page * PAGE < Math.max(to, 1); page += 1) {
      if (!this.asked.has(page)) void this.ask(page);
    }
  }

  private async ask(page: number): Promise<void> {
    const { turn } = this;
    this.asked.add(page);
    try {
      const view = await desk.ask({ ask: 'parts', ...this.query(), from: page * PAGE, count: PAGE });
      if (turn !== this.turn || view.view !== 'parts') return;
      if (this.answered !== turn) this.pages = new Map();
      this.answered = turn;
      this.pages.set(page, view.rows);
      this.summary = { total: view.total, found: view.found, groups: view.groups, sums: view.sums };
      this.failed = false;
    } catch {
      if (turn === this.turn) this.asked.delete(page);
      this.failed = true;
    }
    this.host.requestUpdate();
  }
}
