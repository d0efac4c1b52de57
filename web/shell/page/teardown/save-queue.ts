import { desk } from '../../bridge/desk';
import type { Answer, Beside } from '../../bridge/desk';
import type { Command } from '../../bridge/protocol';

/** One thing to be saved. */
export interface Work {
  /** Asked for when its turn has come, so that it can depend on what was saved before it. */
  command: (blobs: readonly Beside[]) => Command;
  blobs?: () => Promise<Beside[]>;
  /** The same for each try, so that what was stored unseen is not stored twice. */
  id?: string;
  settled: (answer: Answer) => void;
}

/** From this many on the shutter slows down visibly instead of dropping pictures. */
export const DEEP = 6;

/** Saves one thing after the other, in the order of the taps. Tells `depth` when its length changes. */
export class SaveQueue extends EventTarget {
  private readonly works: Work[] = [];
  private running = false;

  constructor(private readonly job: string) {
    super();
  }

  get depth(): number {
    return this.works.length;
  }

  add(work: Work): void {
    this.works.push(work);
    this.tell();
    if (!this.running) void this.run();
  }

  private async run(): Promise<void> {
    this.running = true;
    for (let work = this.works[0]; work; work = this.works[0]) {
      const answer = await this.save(work);
      this.works.shift();
      work.settled(answer);
      this.tell();
    }
    this.running = false;
  }

  private async save(work: Work): Promise<Answer> {
    try {
      const blobs = await work.blobs?.();
      // Another job was opened meanwhile: this waits until its own is.
      if (desk.current() !== this.job) return { ok: false, problems: [] };
      return await desk.command(work.command(blobs ?? []), blobs, work.id);
    } catch {
      // A picture that could not be made, or a desk that is gone: either way it is not saved, and is shown so.
      return { ok: false, problems: [] };
    }
  }

  private tell(): void {
    this.dispatchEvent(new Event('depth'));
  }
}
