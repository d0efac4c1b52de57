import { drawFrame, encode } from './frame-grab';

/** Longer than this and the frame already seen is the picture. */
const LONGEST = 2500;
/** So many frames are taken after a still that did not come, at first and at last. */
const FEW = 5;
const MANY = 80;

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
  private proven = false;
  /** It was asked for a still that has not come yet. */
  private owes = false;
  /** So many frames are taken before it is asked again; twice as many each time that it gives none. */
  private rest = 0;
  private pause = FEW;

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
    const frame = this.proven ? null : drawFrame(this.video);
    const still = this.last.then(() => this.still());
    this.last = still;
    const blob = await still;
    if (!blob) return encode(frame ?? drawFrame(this.video));
    if (frame) frame.width = 0;
    return blob;
  }

  private async still(): Promise<Blob | null> {
    if (!this.camera || this.rests()) return null;
    const blob = await Promise.race([this.ask(this.camera), late()]);
    if (blob && blob.size > 0) {
      [this.proven, this.pause] = [true, FEW];
      return blob;
    }
    // It gives no stills now: a busy system, or a camera that only says it could.
    [this.proven, this.rest] = [false, this.pause];
    this.pause = Math.min(this.pause * 2, MANY);
    return null;
  }

  private rests(): boolean {
    if (this.rest > 0) {
      this.rest -= 1;
      return true;
    }
    return this.owes;
  }

  private async ask(camera: StillCamera): Promise<Blob | null> {
    this.owes = true;
    try {
      return await camera.takePhoto();
    } catch {
      return null;
    } finally {
      this.owes = false;
    }
  }
}

function late(): Promise<null> {
  return new Promise((resolve) => { setTimeout(() => { resolve(null); }, LONGEST); });
}
