import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Heights } from './list-window';

/** Which band of a tall element can be seen, and how tall its rows are; the host is told when the band moves. */
export class RowsInSight implements ReactiveController {
  /** Guesses until the first row is drawn. */
  heights: Heights = { row: 78, head: 56 };
  band: readonly [top: number, bottom: number] = [0, 900];

  private frame = 0;
  private watched: Element | null = null;
  private readonly sizes = new ResizeObserver(() => {
    this.hostUpdated();
    this.soon();
  });

  constructor(private readonly host: ReactiveControllerHost & HTMLElement, private readonly tall: () => HTMLElement | null) {
    host.addController(this);
  }

  hostConnected(): void {
    // Scrolling does not bubble, but can be caught on its way down: whatever scrolls, the page or a pane.
    document.addEventListener('scroll', this.soon, { capture: true, passive: true });
    addEventListener('resize', this.soon);
    this.sizes.observe(this.host);
  }

  hostDisconnected(): void {
    document.removeEventListener('scroll', this.soon, { capture: true });
    removeEventListener('resize', this.soon);
    this.sizes.disconnect();
    cancelAnimationFrame(this.frame);
    this.frame = 0;
  }

  hostUpdated(): void {
    const item = this.host.querySelector('.parts-item');
    const row = item?.getBoundingClientRect().height ?? this.heights.row;
    // A row also grows with the size of type, which nothing else tells of.
    if (item && item !== this.watched) {
      if (this.watched) this.sizes.unobserve(this.watched);
      this.sizes.observe(item);
      this.watched = item;
    }
    const head = this.host.querySelector('.parts-head')?.getBoundingClientRect().height ?? this.heights.head;
    if (Math.abs(row - this.heights.row) < 0.5 && Math.abs(head - this.heights.head) < 0.5) return;
    this.heights = { row, head };
    this.host.requestUpdate();
  }

  readonly soon = (): void => {
    this.frame ||= requestAnimationFrame(() => {
      this.frame = 0;
      this.measure();
    });
  };

  private measure(): void {
    const element = this.tall();
    if (!element) return;
    const { top } = element.getBoundingClientRect();
    const ahead = this.heights.row * 4;
    const next = [-top - ahead, innerHeight - top + ahead] as const;
    // Less than two rows further: what is drawn still covers the sight.
    if (Math.abs(next[0] - this.band[0]) < this.heights.row * 2 && Math.abs(next[1] - this.band[1]) < this.heights.row * 2) return;
    this.band = next;
    this.host.requestUpdate();
  }
}
