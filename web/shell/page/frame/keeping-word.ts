import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { HeadCell } from '../kit/head';
import { words } from '../words';

let kept: boolean | null = null;
let asking: Promise<void> | null = null;
let stale = true;

async function ask(): Promise<void> {
  if (!stale) return;
  stale = false;
  try {
    kept = (await desk.keeping()).persisted;
  } catch {
    kept = null;
  }
}

/** The word that says whether what is recorded is kept; one tap leads to safe keeping. */
export class KeepingWord implements ReactiveController {
  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  get word(): string {
    if (kept === null) return words().places.safeKeeping;
    return kept ? words().kit.kept : words().kit.notKept;
  }

  get icon(): 'kept' | 'caution' {
    return kept === false ? 'caution' : 'kept';
  }

  /** For the right of a head. */
  get cell(): HeadCell {
    return { id: 'kept', word: this.word, icon: this.icon, href: '#/safe-keeping', label: `${words().places.safeKeeping}: ${this.word}` };
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.look);
    void this.look();
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.look);
  }

  private readonly look = async (): Promise<void> => {
    // Storage is asked to be kept at the first saved part: until it is, each change may be the one.
    if (kept !== true) stale = true;
    asking ??= ask().finally(() => { asking = null; });
    await asking;
    this.host.requestUpdate();
  };
}
