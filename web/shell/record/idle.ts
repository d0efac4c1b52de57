const QUIET_MS = 600;

/** Does its work once nobody has poked it for a while: nothing here may delay a tick. */
export class Idle {
  readonly #work: () => Promise<void>;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #poked = 0;

  constructor(work: () => Promise<void>) {
    this.#work = work;
  }

  poke(): void {
    this.#poked = performance.now();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#begin(), QUIET_MS);
  }

  isIdle(): boolean {
    return performance.now() - this.#poked >= QUIET_MS;
  }

  async #begin(): Promise<void> {
    try {
      await this.#work();
    } catch (error) {
      // Nothing was promised to anybody: it is tried again after the next command.
      if (error instanceof WebAssembly.RuntimeError) throw error;
      console.warn('left for later', error);
    }
  }
}
