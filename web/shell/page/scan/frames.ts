import { desk } from '../../bridge/desk';
import type { Viewfinder } from '../camera/viewfinder';
import { SeenAgain } from './seen-again';

/** At most so many frames a second: between two there is time for everything else. */
const EVERY_MS = 80;
const WIDE = 640;
const HIGH = 480;
/** The middle of the picture that is read, as the frame drawn on it shows. */
const MIDDLE = 0.75;

/** So many failures one after the other, and the reader is not asked again: each would start a worker anew. */
const MOST_FAILURES = 3;

/** Reads tags out of the live picture: one frame under way at a time. Tells each code once when it comes into sight, and once that it cannot read. */
export class Frames {
  private readonly canvas = document.createElement('canvas');
  private readonly seen = new SeenAgain();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private runs = false;
  private failures = 0;
  /** Counts the starts: what a start before still reads goes no further. */
  private turn = 0;

  constructor(private readonly finder: Pick<Viewfinder, 'sight' | 'video' | 'stir'>, private readonly take: (codes: string[]) => void, private readonly failed: () => void) {}

  start(): void {
    if (this.runs) return;
    this.runs = true;
    this.failures = 0;
    void this.next(++this.turn);
  }

  stop(): void {
    this.runs = false;
    clearTimeout(this.timer);
  }

  private async next(turn: number): Promise<void> {
    const began = performance.now();
    try {
      await this.read();
      this.failures = 0;
    } catch {
      this.failures += 1;
    }
    if (!this.runs || turn !== this.turn) return;
    if (this.failures >= MOST_FAILURES) {
      this.stop();
      this.failed();
      return;
    }
    this.timer = setTimeout(() => { void this.next(turn); }, Math.max(0, EVERY_MS - (performance.now() - began)));
  }

  private async read(): Promise<void> {
    // Behind a dialog nobody holds a tag into the picture: what lies there is not meant.
    const isSeen = this.finder.sight === 'live' && !document.hidden && !document.querySelector('dialog[open]');
    const image = isSeen ? this.middle() : null;
    if (!image) return;
    const codes = await desk.readFrame(image.data.buffer, image.width, image.height);
    if (!this.runs || codes.length === 0) return;
    // A tag before the camera is work: it must not fall asleep.
    this.finder.stir();
    const fresh = this.seen.fresh(codes, performance.now());
    if (fresh.length > 0) this.take(fresh);
  }

  private middle(): ImageData | null {
    const { video } = this.finder;
    const { videoWidth: width, videoHeight: height } = video;
    if (width === 0 || height === 0) return null;
    const [wide, high] = [width * MIDDLE, height * MIDDLE];
    const scale = Math.min(1, WIDE / wide, HIGH / high);
    this.canvas.width = Math.max(1, Math.round(wide * scale));
    this.canvas.height = Math.max(1, Math.round(high * scale));
    const pen = this.canvas.getContext('2d', { willReadFrequently: true });
    if (!pen) return null;
    pen.drawImage(video, (width - wide) / 2, (height - high) / 2, wide, high, 0, 0, this.canvas.width, this.canvas.height);
    return pen.getImageData(0, 0, this.canvas.width, this.canvas.height);
  }
}
