/** Takes a picture every few seconds without a touch, until it is stopped or the page is hidden. Tells `tick` each second. */
export class Series extends EventTarget {
  /** Seconds to the next picture; null when no series runs. */
  left: number | null = null;

  private every = 5;
  private timer: ReturnType<typeof setInterval> | undefined;

  constructor(private readonly shoot: () => void) {
    super();
  }

  start(every: number): void {
    this.stop();
    this.every = every;
    this.left = every;
    this.timer = setInterval(this.second, 1000);
    document.addEventListener('visibilitychange', this.hidden);
    this.tell();
  }

  stop(): void {
    clearInterval(this.timer);
    document.removeEventListener('visibilitychange', this.hidden);
    if (this.left === null) return;
    this.left = null;
    this.tell();
  }

  private readonly second = (): void => {
    if (this.left === null) return;
    this.left -= 1;
    if (this.left <= 0) {
      this.left = this.every;
      this.shoot();
    }
    this.tell();
  };

  private readonly hidden = (): void => { if (document.hidden) this.stop(); };

  private tell(): void {
    this.dispatchEvent(new Event('tick'));
  }
}
