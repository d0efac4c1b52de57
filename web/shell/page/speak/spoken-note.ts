// Sound is stored slice by slice as it comes: what was said before a kill is kept.

const SLICE = 3000;
const KINDS = ['audio/webm;codecs=opus', 'audio/mp4', 'audio/ogg;codecs=opus', ''];

/** One stretch of sound. */
export interface Slice {
  note: string;
  order: number;
  lasts: number;
  media_type: string;
  bytes: Promise<ArrayBuffer>;
}

export type Hearing = 'quiet' | 'starting' | 'hearing' | 'refused' | 'none';

/** The microphone for one spoken note after the other. Tells `hearing`; hands over each slice. */
export class SpokenNote extends EventTarget {
  hearing: Hearing = 'quiet';

  private recorder: MediaRecorder | null = null;
  private wanted = false;

  constructor(private readonly slice: (slice: Slice) => void) {
    super();
  }

  /** Whether this browser can record sound at all. */
  static get isOffered(): boolean {
    return typeof MediaRecorder !== 'undefined' && navigator.mediaDevices?.getUserMedia !== undefined;
  }

  async start(note: string): Promise<void> {
    if (this.wanted) return;
    this.wanted = true;
    this.show('starting');
    document.addEventListener('visibilitychange', this.hidden);
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
      // Let go before the microphone came: nothing was said.
      if (!this.wanted) { stop(stream); this.show('quiet'); return; }
      this.record(stream, note);
    } catch (error) {
      this.wanted = false;
      this.show(error instanceof DOMException && error.name === 'NotAllowedError' ? 'refused' : 'none');
    }
  }

  stop(): void {
    this.wanted = false;
    document.removeEventListener('visibilitychange', this.hidden);
    if (this.recorder && this.recorder.state !== 'inactive') this.recorder.stop();
  }

  private record(stream: MediaStream, note: string): void {
    const mimeType = KINDS.find((kind) => kind === '' || MediaRecorder.isTypeSupported(kind)) ?? '';
    const recorder = new MediaRecorder(stream, mimeType ? { mimeType } : {});
    let [order, since] = [0, performance.now()];
    recorder.addEventListener('dataavailable', ({ data }) => {
      // Some browsers send empty slices.
      if (data.size === 0) return;
      const now = performance.now();
      this.slice({ note, order: ++order, lasts: Math.round(now - since), media_type: data.type || recorder.mimeType, bytes: data.arrayBuffer() });
      since = now;
    });
    recorder.addEventListener('stop', () => { stop(stream); this.recorder = null; this.show('quiet'); });
    this.recorder = recorder;
    recorder.start(SLICE);
    this.show('hearing');
  }

  private readonly hidden = (): void => { if (document.hidden) this.stop(); };

  private show(hearing: Hearing): void {
    this.hearing = hearing;
    this.dispatchEvent(new Event('hearing'));
  }
}

function stop(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
