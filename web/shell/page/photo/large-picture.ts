import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk, type DeskEvents } from '../../bridge/desk';
import { Pictures } from '../pictures';

/** The picture of one photo: the small one at once, the large one when it is here. Only one large picture is held. */
export class LargePicture implements ReactiveController {
  /** It is not on this device. */
  missing = false;
  private hash = '';
  private large = '';
  private readonly pictures: Pictures;

  constructor(private readonly host: ReactiveControllerHost) {
    this.pictures = new Pictures(host);
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('derived', this.derived);
  }

  hostDisconnected(): void {
    desk.removeEventListener('derived', this.derived);
    this.drop();
  }

  /** The best that is here. */
  address(hash: string): string {
    if (hash !== this.hash) {
      this.drop();
      this.hash = hash;
      if (hash) void this.fetch(hash);
    }
    return this.large || (hash ? this.pictures.small(hash) : '');
  }

  private async fetch(hash: string): Promise<void> {
    let picture: Blob | null = null;
    try {
      picture = await desk.view(hash);
    } catch {
      // The desk tells of trouble; here it counts as missing until it is asked for again.
    }
    if (hash !== this.hash) return;
    this.missing = picture === null;
    if (picture) {
      if (this.large) URL.revokeObjectURL(this.large);
      this.large = URL.createObjectURL(picture);
    }
    this.host.requestUpdate();
  }

  private readonly derived = ({ detail }: DeskEvents['derived']): void => {
    if (detail.hash === this.hash) void this.fetch(this.hash);
  };

  private drop(): void {
    if (this.large) URL.revokeObjectURL(this.large);
    this.large = '';
    this.hash = '';
    this.missing = false;
  }
}
