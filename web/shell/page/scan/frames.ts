import { desk } from '../../bridge/desk';
import type { Viewfinder } from '../camera/viewfinder';
import { SeenAgain } from './seen-again';

/** At most so many frames a second: between two there is time for everything else. */
const EVERY_MS = 80;
const WIDE = 640;
const HIGH = 480;
/** The middle of the picture that is read, as the frame drawn on it shows. */
const MIDDLE = 0.75;

/** Reads tags out of the live picture: one frame under way at a time. Tells each code once when it comes into sight. */
export class Frames {
  private readonly canvas = document.createElement('canvas');
  private readonly seen = new SeenAgain();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private runs = false;

  constructor(private readonly finder: Viewfinder, private readonly take: (codes: string[]) => void) {}

  start(): void {
    if (this.runs) return;
    this.runs = true;
    void this.next();
  }

  stop(): void {
    this.runs = false;
    clearTimeout(this.timer);
  }

  private async next(): Promise<void> {
    const began = performance.now();
    await this.read().catch(() => undefined);
    if (!this.runs) return;
    this.timer = setTimeout(() => { void this.next(); }, Math.max(0, EVERY_MS - (performance.now() - began)));
  }

  private async read(): Promise<void> {
    const image = this.finder.sight === 'live' && !document.hidden ? this.middle() : null;
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
