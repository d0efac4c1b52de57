import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { HeadCell } from '../kit/head';
import * as journal from '../journal';
import { isDue, readRemind } from '../safe-keeping/due';
import { words } from '../words';

/** Where the browser has promised to keep everything, only the reminder can change: it need not be quick. */
const CALM_MS = 20_000;

let kept: boolean | null = null;
let due = false;
let asking: Promise<void> | null = null;
let askedAt = -Infinity;
let askedFor: string | null = null;

async function ask(): Promise<void> {
  // Storage is asked to be kept at the first saved part: until it is, each change may be the one.
  const isCalm = kept === true && !due && askedFor === desk.current();
  if (isCalm && performance.now() - askedAt < CALM_MS) return;
  [askedAt, askedFor] = [performance.now(), desk.current()];
  try {
    const keeping = await desk.keeping();
    kept = keeping.persisted;
    due = isDue(readRemind(journal.preference('remind')), keeping, Date.now());
  } catch {
    kept = null;
  }
}

/** The word that says whether what is recorded is kept, or that a job file is due; one tap leads to safe keeping. */
export class KeepingWord implements ReactiveController {
  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  get word(): string {
    if (due) return words().kit.fileDue;
    if (kept === null) return words().places.safeKeeping;
    return kept ? words().kit.kept : words().kit.notPromised;
  }

  get icon(): 'kept' | 'caution' {
    return kept === false || due ? 'caution' : 'kept';
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
    asking ??= ask().finally(() => { asking = null; });
    await asking;
    this.host.requestUpdate();
  };
}
