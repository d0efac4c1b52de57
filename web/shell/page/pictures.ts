import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk, type DeskEvents } from '../bridge/desk';

const MOST = 300;
const addresses = new Map<string, string>();
const onTheWay = new Set<string>();
const arrived = new EventTarget();

/** Small pictures by the hash of their photo, for as long as they are likely to be shown again. */
export class Pictures implements ReactiveController {
  private frame = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    arrived.addEventListener('arrived', this.redraw);
    desk.addEventListener('derived', this.derived);
  }

  hostDisconnected(): void {
    arrived.removeEventListener('arrived', this.redraw);
    desk.removeEventListener('derived', this.derived);
    cancelAnimationFrame(this.frame);
    this.frame = 0;
  }

  /** The address of the small picture; empty until it is here. */
  small(hash: string): string {
    const address = addresses.get(hash);
    if (address === undefined) void fetchSmall(hash);
    else touch(hash, address);
    return address ?? '';
  }

  // Many arrive at once; one frame shows them all.
  private readonly redraw = (): void => {
    this.frame ||= requestAnimationFrame(() => {
      this.frame = 0;
      this.host.requestUpdate();
    });
  };

  private readonly derived = ({ detail }: DeskEvents['derived']): void => { void fetchSmall(detail.hash); };
}

async function fetchSmall(hash: string): Promise<void> {
  if (onTheWay.has(hash) || addresses.has(hash)) return;
  onTheWay.add(hash);
  try {
    const picture = await desk.thumb(hash);
    if (picture) {
      touch(hash, URL.createObjectURL(picture));
      arrived.dispatchEvent(new Event('arrived'));
    }
  } catch {
    // A picture that cannot be read leaves its ground; the sheet of the photo says why.
  } finally {
    onTheWay.delete(hash);
  }
}

/** Moves it to the young end and lets the oldest go. */
function touch(hash: string, address: string): void {
  addresses.delete(hash);
  addresses.set(hash, address);
  if (addresses.size <= MOST) return;
  const [oldest] = addresses;
  if (!oldest) return;
  URL.revokeObjectURL(oldest[1]);
  addresses.delete(oldest[0]);
}
