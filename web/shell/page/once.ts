/**
 * Keeps the second of two taps from making a second record. A key is taken once for what is on the screen: until that has changed, or it
 * was not stored.
 */
export class Once {
  private readonly busy = new Set<string>();
  private readonly done = new Map<string, unknown>();

  /** `shown`: the answer that the button stands in; none for a form, which goes by itself. `work` tells whether it was stored. */
  async run(key: string, shown: unknown, work: () => Promise<boolean>): Promise<void> {
    const isDone = shown !== undefined && this.done.has(key) && this.done.get(key) === shown;
    if (isDone || this.busy.has(key)) return;
    this.busy.add(key);
    this.done.delete(key);
    try {
      if (await work()) this.done.set(key, shown);
    } finally {
      this.busy.delete(key);
    }
  }
}
