import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { everythingIsKept, updates } from '../update';

let ready = false;

/** Whether every file of the app is on this device. */
export class OfflineReady implements ReactiveController {
  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  get isReady(): boolean {
    return ready;
  }

  hostConnected(): void {
    updates.addEventListener('ready', this.now);
    if (!ready) void everythingIsKept().then((kept) => { if (kept) this.now(); });
  }

  hostDisconnected(): void {
    updates.removeEventListener('ready', this.now);
  }

  private readonly now = (): void => {
    ready = true;
    this.host.requestUpdate();
  };
}
