import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { Id, UndecidedPart, UndecidedView } from '../../bridge/protocol';
import { today } from '../today';

/** How long entries may still arrive before the ranking is worked out again. */
const SETTLE = 400;

/**
 * The undecided, most at stake first. It is worked out beside the screen, and again when entries arrive; whoever was put off stands last.
 * Who was decided meanwhile is gone at once: a ranking that was asked for before knows nothing of it, and would lead there again.
 */
export class Queue implements ReactiveController {
  view: UndecidedView | undefined;
  /** It could not be worked out. */
  failed = false;
  private putOff: readonly Id[] = [];
  private gone: ReadonlySet<Id> = new Set();
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private asking: AbortController | undefined;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.soon);
    void this.ask();
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.soon);
    clearTimeout(this.waiting);
    this.asking?.abort();
  }

  get parts(): readonly UndecidedPart[] {
    const parts = (this.view?.parts ?? []).filter(({ part }) => !this.gone.has(part));
    const late = (part: UndecidedPart): number => this.putOff.indexOf(part.part);
    return [...parts].sort((a, b) => late(a) - late(b));
  }

  /** Whichever comes after this one; the first when it is not here, or was the last. */
  after(part: Id, step = 1): UndecidedPart | undefined {
    const { parts } = this;
    const at = parts.findIndex((one) => one.part === part);
    return parts[at < 0 ? 0 : (at + step + parts.length) % parts.length];
  }

  later(part: Id): UndecidedPart | undefined {
    const next = this.after(part);
    this.putOff = [...this.putOff.filter((one) => one !== part), part];
    this.host.requestUpdate();
    return next;
  }

  /** These were decided, the first of them on the screen. Whoever comes after it; nobody when all are decided. */
  decided(decided: readonly Id[]): UndecidedPart | undefined {
    const before = this.parts;
    this.gone = new Set([...this.gone, ...decided]);
    const left = new Set(this.parts);
    this.host.requestUpdate();
    const at = before.findIndex(({ part }) => part === decided[0]);
    return [...before.slice(at + 1), ...before.slice(0, at + 1)].find((part) => left.has(part));
  }

  /** A decision was taken back. */
  reopened(): void {
    this.gone = new Set();
  }

  private readonly soon = (): void => {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => { void this.ask(); }, SETTLE);
  };

  private async ask(): Promise<void> {
    this.asking?.abort();
    const asking = new AbortController();
    this.asking = asking;
    const known = this.gone;
    try {
      const answer = await desk.weigh({ ask: 'undecided', today: today() }, asking.signal);
      if (asking.signal.aborted) return;
      if (answer.view === 'undecided') [this.view, this.failed] = [answer, false];
      this.gone = new Set([...this.gone].filter((part) => !known.has(part)));
    } catch {
      if (asking.signal.aborted) return;
      this.failed = true;
    }
    this.host.requestUpdate();
  }
}
