const QUIET_MS = 600;

/** Does its work once nobody has poked it for a while: nothing here may delay a tick. */
export class Idle {
  readonly #work: () => Promise<void>;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #poked = 0;
  #under = 0;

  constructor(work: () => Promise<void>) {
    this.#work = work;
  }

  poke(): void {
    this.#poked = performance.now();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#begin(), QUIET_MS);
  }

  /** Nobody is idle while this is under way, however long a slow device takes over it. */
  async during<T>(work: () => Promise<T>): Promise<T> {
    this.#under += 1;
    this.poke();
    try {
      return await work();
    } finally {
      this.#under -= 1;
      this.poke();
    }
  }

  isIdle(): boolean {
    return this.#under === 0 && performance.now() - this.#poked >= QUIET_MS;
  }

  async #begin(): Promise<void> {
    // Whatever is under way pokes once more when it is done.
    if (this.#under > 0) return;
    try {
      await this.#work();
    } catch (error) {
      // Nothing was promised to anybody: it is tried again after the next command.
      if (error instanceof WebAssembly.RuntimeError) throw error;
      console.warn('left for later', error);
    }
  }
}
