/** Keeps the screen lit while someone works, where that is offered; never needed. */
export class WakeLock {
  private lock: WakeLockSentinel | null = null;
  private wanted = false;

  hold(): void {
    this.wanted = true;
    document.addEventListener('visibilitychange', this.again);
    void this.ask();
  }

  release(): void {
    this.wanted = false;
    document.removeEventListener('visibilitychange', this.again);
    void this.lock?.release().catch(() => undefined);
    this.lock = null;
  }

  private readonly again = (): void => {
    // It is taken away whenever the page is hidden.
    if (!document.hidden) void this.ask();
  };

  private async ask(): Promise<void> {
    if (!this.wanted || !('wakeLock' in navigator)) return;
    try {
      const lock = await navigator.wakeLock.request('screen');
      if (this.wanted) this.lock = lock;
      else await lock.release();
    } catch {
      // Low battery or not offered: the screen dims as always.
    }
  }
}
