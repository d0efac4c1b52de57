import type { RecordView } from '../../bridge/protocol';

/** Gives positions that follow on, also before the last ones have been saved and read back. */
export class Orders {
  private readonly given = new Map<string, number>();

  /** The next position within `of`. */
  next(of: string, there: readonly RecordView[]): number {
    const orders = there.map(({ values }) => values.order ?? 0);
    const next = Math.max(this.given.get(of) ?? 0, 0, ...orders) + 1;
    this.given.set(of, next);
    return next;
  }
}
