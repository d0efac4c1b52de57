/** Tells the other windows that something was stored, and hears them. Each reads the entries from the database itself. */
export class Windows {
  readonly #channel: BroadcastChannel | undefined;

  constructor(ears: { hear: (job: string, replica: string, last: number) => Promise<void> }) {
    if (!('BroadcastChannel' in self)) return;
    this.#channel = new BroadcastChannel('asfound');
    this.#channel.addEventListener('message', ({ data }: MessageEvent<Stored>) => {
      ears.hear(data.job, data.replica, data.last).catch((error: unknown) => {
        // What cannot be read now is caught up with when this window is next looked at. After a trap there is no such later.
        if (error instanceof WebAssembly.RuntimeError) throw error;
      });
    });
  }

  tell(job: string, entry: string): void {
    const [replica = '', last = '0'] = entry.split(':');
    this.#channel?.postMessage({ job, replica, last: Number(last) } satisfies Stored);
  }

  /** Something of many replicas was stored: a replica that nobody is, and a number nobody reaches, makes all catch up. */
  tellAll(job: string): void {
    this.#channel?.postMessage({ job, replica: '0'.repeat(16), last: Number.MAX_SAFE_INTEGER } satisfies Stored);
  }
}

interface Stored {
  job: string;
  replica: string;
  last: number;
}
