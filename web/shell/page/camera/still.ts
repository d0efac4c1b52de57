import { drawFrame, encode } from './frame-grab';

/** Longer than this and the frame already seen is the picture. */
const LONGEST = 2500;

interface StillCamera { takePhoto(): Promise<Blob> }
interface StillCameraMaker { new (track: MediaStreamTrack): StillCamera }

// Not in every browser, and not in the library of types.
function maker(): StillCameraMaker | undefined {
  const found: unknown = Reflect.get(globalThis, 'ImageCapture');
  return isMaker(found) ? found : undefined;
}

function isMaker(value: unknown): value is StillCameraMaker {
  return typeof value === 'function' && typeof Reflect.get(value.prototype as object, 'takePhoto') === 'function';
}

/** Whether this browser can take stills at all. */
export function givesStills(): boolean {
  return maker() !== undefined;
}

/** Takes stills one after another: a camera that is asked twice at once refuses both. */
export class Stills {
  private readonly camera: StillCamera | undefined;
  private last: Promise<unknown> = Promise.resolve();
  private refused = false;
  private proven = false;

  constructor(private readonly video: HTMLVideoElement, track: MediaStreamTrack) {
    const Maker = maker();
    try {
      this.camera = Maker && new Maker(track);
    } catch {
      this.camera = undefined;
    }
  }

  /** The still of the camera, else the frame that was seen at the tap. */
  async take(): Promise<Blob> {
    // Until this camera has given a still the frame is drawn at the tap, to have it when none comes.
    const frame = this.proven && !this.refused ? null : drawFrame(this.video);
    const still = this.last.then(() => this.still());
    this.last = still;
    const blob = await still;
    if (!blob) return encode(frame ?? drawFrame(this.video));
    if (frame) frame.width = 0;
    return blob;
  }

  private async still(): Promise<Blob | null> {
    if (!this.camera || this.refused) return null;
    try {
      const blob = await Promise.race([this.camera.takePhoto(), late()]);
      if (blob && blob.size > 0) {
        this.proven = true;
        return blob;
      }
    } catch {
      // Falls through: this camera gives no stills now.
    }
    this.refused = true;
    return null;
  }
}

function late(): Promise<null> {
  return new Promise((resolve) => { setTimeout(() => { resolve(null); }, LONGEST); });
}
