import { drawSmall, encode } from './frame-grab';
import { Stills, givesStills } from './still';

/** asleep: stopped to spare the battery · refused: no permission · none: no camera, or it failed twice. */
export type Sight = 'starting' | 'live' | 'asleep' | 'refused' | 'none';

/** One picture: a small one at once, the bytes a moment later. */
export interface Shot {
  small: Promise<Blob>;
  bytes: Promise<{ bytes: ArrayBuffer; media_type: string }>;
}

const IDLE = 90_000;

/**
 * The camera in the page. One stream serves a whole session: asking again may ask the person again. Tells `sight` when what it
 * shows changes.
 */
export class Viewfinder extends EventTarget {
  readonly video = document.createElement('video');
  sight: Sight = 'asleep';
  torch: 'none' | 'off' | 'on' = 'none';

  private stream: MediaStream | null = null;
  private stills: Stills | null = null;
  private starting: Promise<void> | null = null;
  private idle: ReturnType<typeof setTimeout> | undefined;
  private failures = 0;
  private wanted = false;

  constructor() {
    super();
    Object.assign(this.video, { muted: true, autoplay: true, playsInline: true });
    // Without the attributes some browsers show black.
    for (const name of ['muted', 'autoplay', 'playsinline']) this.video.setAttribute(name, '');
    this.video.setAttribute('aria-hidden', 'true');
  }

  /** From now on the camera is wanted whenever the page is seen. */
  open(): void {
    this.wanted = true;
    document.addEventListener('visibilitychange', this.look);
    // Some phones come back without telling that the page is visible again.
    window.addEventListener('focus', this.look);
    window.addEventListener('pageshow', this.look);
    window.addEventListener('pagehide', this.hide);
    void this.start();
  }

  close(): void {
    this.wanted = false;
    document.removeEventListener('visibilitychange', this.look);
    window.removeEventListener('focus', this.look);
    window.removeEventListener('pageshow', this.look);
    window.removeEventListener('pagehide', this.hide);
    this.stop('asleep');
  }

  /** Starts, or starts again; several callers wait for the same start. */
  start(): Promise<void> {
    this.starting ??= this.begin().finally(() => { this.starting = null; });
    return this.starting;
  }

  /** The person is at work: the camera stays on. */
  stir(): void {
    clearTimeout(this.idle);
    if (this.sight === 'live') this.idle = setTimeout(() => { this.stop('asleep'); }, IDLE);
  }

  /** Takes a picture; nothing when there is no sight. */
  shoot(): Shot | null {
    if (this.sight !== 'live' || !this.stills || this.video.videoWidth === 0) return null;
    this.stir();
    const small = encode(drawSmall(this.video), 0.8);
    const bytes = this.stills.take().then(async (blob) => ({ bytes: await blob.arrayBuffer(), media_type: blob.type || 'image/jpeg' }));
    return { small, bytes };
  }

  async turnTorch(): Promise<void> {
    const track = this.stream?.getVideoTracks()[0];
    if (!track || this.torch === 'none') return;
    const next = this.torch === 'on' ? 'off' : 'on';
    // The library of types does not know the torch.
    const constraint: MediaTrackConstraintSet & { torch: boolean } = { torch: next === 'on' };
    try {
      await track.applyConstraints({ advanced: [constraint] });
      this.torch = next;
    } catch {
      this.torch = 'none';
    }
    this.tell();
  }

  private async begin(): Promise<void> {
    if (this.isLive()) return;
    if (!navigator.mediaDevices?.getUserMedia) { this.show('none'); return; }
    this.show('starting');
    try {
      const stream = await navigator.mediaDevices.getUserMedia({
        audio: false, video: { facingMode: { ideal: 'environment' }, ...size() },
      });
      if (!this.wanted || document.hidden) { stopTracks(stream); this.show('asleep'); return; }
      await this.take(stream);
    } catch (error) {
      this.failed(error);
    }
  }

  private async take(stream: MediaStream): Promise<void> {
    this.release();
    this.stream = stream;
    const track = stream.getVideoTracks()[0];
    if (!track) throw new Error('a stream without a picture');
    track.addEventListener('ended', () => { if (this.stream === stream) this.lost(); });
    this.stills = new Stills(this.video, track);
    this.torch = offersTorch(track) ? 'off' : 'none';
    this.video.srcObject = stream;
    await this.video.play();
    await firstFrame(this.video);
    this.failures = 0;
    this.show('live');
    this.stir();
  }

  private failed(error: unknown): void {
    this.release();
    const name = error instanceof DOMException ? error.name : '';
    if (name === 'NotAllowedError' || name === 'SecurityError') { this.show('refused'); return; }
    this.failures += 1;
    if (name !== 'NotFoundError' && this.failures < 3 && this.wanted && !document.hidden) {
      setTimeout(() => { if (this.wanted) void this.start(); }, 400);
      return;
    }
    this.show('none');
  }

  private lost(): void {
    this.stop('asleep');
    if (this.wanted && !document.hidden) void this.start();
  }

  private stop(then: Sight): void {
    clearTimeout(this.idle);
    this.release();
    this.show(then);
  }

  private release(): void {
    if (this.stream) stopTracks(this.stream);
    this.stream = null;
    this.stills = null;
    this.torch = 'none';
    this.video.srcObject = null;
  }

  // A track may claim to live after an interruption: one that stays muted or has no picture is dead.
  private isLive(): boolean {
    const track = this.stream?.getVideoTracks()[0];
    return track !== undefined && track.readyState === 'live' && !track.muted && this.video.videoWidth > 0;
  }

  private readonly look = (): void => {
    if (document.hidden) this.hide();
    else if (this.wanted && !this.isLive() && this.sight !== 'refused' && this.sight !== 'none') void this.start();
  };

  private readonly hide = (): void => {
    if (this.sight === 'live' || this.sight === 'starting') this.stop('asleep');
  };

  private show(sight: Sight): void {
    this.sight = sight;
    this.tell();
  }

  private tell(): void {
    this.dispatchEvent(new Event('sight'));
  }
}

function stopTracks(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

function offersTorch(track: MediaStreamTrack): boolean {
  // Only what this track can do tells the truth; what the browser knows of says yes to everything.
  const can: MediaTrackCapabilities & { torch?: boolean } = track.getCapabilities?.() ?? {};
  return can.torch === true;
}

function firstFrame(video: HTMLVideoElement): Promise<void> {
  if (video.videoWidth > 0) return Promise.resolve();
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => { reject(new Error('no picture came')); }, 4000);
    video.addEventListener('loadeddata', () => { clearTimeout(timer); resolve(); }, { once: true });
  });
}

// Where stills are to be had the video only has to look good; else its frames are the pictures.
function size(): MediaTrackConstraints {
  return givesStills() ? { width: { ideal: 1920 }, height: { ideal: 1440 } } : { width: { ideal: 4096 }, height: { ideal: 3072 } };
}
