import { isAsking } from '../live';
import type { Address, PlaceElement } from '../places';
import { say } from '../say';
import { words } from '../words';

/** So long a heading is waited for; whatever comes later is named, but takes no focus. */
const LONGEST = 3000;
/** Answers that take longer than this are not waited for. */
const ANSWERS = 1000;
const STEP = 40;

/**
 * Coming to an address: the window is named after what is open there, and the focus goes to its heading, also where the place stays and
 * only what it shows is another. The heading comes with the answer to what the place asks.
 */
export class Arrival {
  private turn = 0;
  private readonly heard = new MutationObserver(() => { this.name(); });
  private place: PlaceElement | null = null;

  /** `before` had the focus when the address changed; `sameRecord`: only what stands after the question mark is another. */
  async at(place: PlaceElement, { before, focus, sameRecord }: { before: Element | null; focus: boolean; sameRecord: boolean }): Promise<void> {
    const turn = ++this.turn;
    if (this.place !== place) {
      this.place = place;
      this.heard.disconnect();
      this.heard.observe(place, { childList: true, characterData: true, subtree: true });
    }
    await place.updateComplete;
    this.name();
    if (!focus || (sameRecord && before?.isConnected && before.matches('input, textarea, select'))) return;
    const begun = performance.now();
    let given: HTMLElement | null = null;
    while (turn === this.turn && performance.now() - begun < LONGEST) {
      await new Promise((soon) => { setTimeout(soon, STEP); });
      if (turn !== this.turn) return;
      const now = document.activeElement;
      const free = now === null || now === document.body || now === given || (given === null && (now === before || now.matches('h1')));
      // Who has gone on meanwhile is not called back.
      if (!free || document.querySelector('dialog[open]')) return;
      // Drawn anew, the heading has lost it; what has been pressed since then has a rule of its own.
      if (given?.isConnected && now !== given) return;
      const heading = headingOf(place);
      if (!heading?.textContent.trim() || (isAsking() && performance.now() - begun < ANSWERS)) continue;
      // A heading that has the focus already is not read out again by itself.
      if (heading === now && given === null) say(textOf(heading));
      heading.focus({ preventScroll: true });
      given = heading;
    }
  }

  private name(): void {
    const { place } = this;
    if (!place) return;
    const title = [textOf(headingOf(place)), words().places.app].filter(Boolean).join(' – ');
    if (document.title !== title) document.title = title;
  }
}

/** Where a list stands beside what was opened from it, the record has the name, and without a record the list. */
function headingOf(place: PlaceElement & { address?: Address }): HTMLElement | null {
  const all = place.querySelectorAll<HTMLElement>('h1');
  return (place.address?.id ? all[all.length - 1] : all[0]) ?? null;
}

function textOf(heading: HTMLElement | null): string {
  return heading?.textContent.replace(/\s+/g, ' ').trim() ?? '';
}
