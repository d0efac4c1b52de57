/** What can have the focus. */
const TAKES = 'button:not(:disabled), a[href], input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]';
/** Said where something is under way or has gone wrong: it takes the focus rather than what stands further on. */
const SAYS = '[role="status"]:not(:empty), [role="alert"]:not(:empty)';
/** Here the keys are for the work, or what is pressed never goes; the list of parts keeps its own. */
const LEFT_ALONE = 'asf-place-teardown, asf-parts-list';
/** What lies above the page and comes and goes by itself. */
const ABOVE = 'asf-notices, dialog';
/** So long a place has to find the focus by its own rule. */
const OWN_RULE = 80;
const MOVING = new Set(['Tab', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'PageUp', 'PageDown', 'Home', 'End']);

/** The page itself: what follows there is another matter. */
const PAGE = '.body, .place, main';

/** Where something stood: its parents from the inside out, each with how many children it had, and which of them led there. */
interface Stood { element: Element; parents: readonly { parent: Element; at: number; of: number }[] }

let last: Stood | null = null;
/** The last on the page itself: where the focus goes back to from what lies above. */
let lastBelow: Stood | null = null;
/** Something was done with it; what goes out of sight while one scrolls is not followed. */
let acted = false;
let timer: ReturnType<typeof setTimeout> | undefined;

/**
 * Keeps the focus where the work is: when an action takes its own button away, the focus goes to what has taken its place, else to the
 * next row, else to the heading above, never back to the start of the page.
 */
export function keepFocus(): void {
  const note = (event: Event): void => {
    const element = event.target instanceof Element ? event.target.closest(TAKES) : null;
    if (element) remember(element);
  };
  const pressed = (event: Event): void => {
    const element = event.target instanceof Element ? event.target.closest(TAKES) : null;
    acted = element !== null;
    if (element) remember(element);
    // A touch beside everything lets go.
    else if (event.type === 'pointerdown') last = null;
  };
  document.addEventListener('focusin', note, { capture: true, passive: true });
  document.addEventListener('pointerdown', pressed, { capture: true, passive: true });
  document.addEventListener('click', pressed, { capture: true, passive: true });
  document.addEventListener('keydown', ({ key }) => { acted = !MOVING.has(key); }, { capture: true, passive: true });
  document.addEventListener('wheel', () => { acted = false; }, { capture: true, passive: true });
  document.addEventListener('touchmove', () => { acted = false; }, { capture: true, passive: true });
  // Another page has its own rule for where one begins.
  window.addEventListener('hashchange', () => { [last, lastBelow] = [null, null]; });
  new MutationObserver(() => {
    if (!acted || !isLost()) return;
    clearTimeout(timer);
    timer = setTimeout(find, OWN_RULE);
  }).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ['disabled'] });
}

function remember(element: Element): void {
  const parents: { parent: Element; at: number; of: number }[] = [];
  for (let inner = element; inner.parentElement && inner.localName !== 'main' && inner.localName !== 'body'; inner = inner.parentElement) {
    const children = [...inner.parentElement.children];
    parents.push({ parent: inner.parentElement, at: children.indexOf(inner), of: children.length });
  }
  last = { element, parents };
  if (!element.closest(ABOVE)) lastBelow = last;
}

function isLost(): boolean {
  const now = document.activeElement;
  return last !== null && (now === null || now === document.body) && isGone(last.element);
}

function isGone(element: Element): boolean {
  return !element.isConnected || element.matches(':disabled') || !element.checkVisibility();
}

function find(): void {
  if (!isLost() || !last) return;
  const dialog = document.querySelector('dialog[open]');
  // What lay above is gone with all that was in it: back to the page below.
  const wasAbove = last.parents.some(({ parent }) => parent.matches(ABOVE));
  const stood = !dialog && wasAbove ? lastBelow : last;
  const to = stood && (isGone(stood.element) ? successor(stood, dialog) : stood.element);
  const found = to ?? (dialog ?? document.querySelector('main'))?.querySelector('h1, .dialog-label') ?? null;
  if (found instanceof HTMLElement) give(found);
}

function successor({ parents }: Stood, dialog: Element | null): Element | null {
  let first = true;
  for (const { parent, at, of } of parents) {
    if (!parent.isConnected || (dialog && !dialog.contains(parent))) continue;
    if (parent.closest(LEFT_ALONE)) return document.body;
    const children = [...parent.children];
    if (parent.matches(PAGE)) {
      const instead = first ? children[at] : undefined;
      return (instead && children.length >= of ? seen([instead])[0] ?? saying(instead) : instead?.querySelector('h2, h3')) ?? null;
    }
    // What was there is no more, and the next has moved up; further out it is still there.
    const after = children.slice(first ? at : at + 1);
    const [instead] = after;
    if (first && instead && seen([instead]).length === 0 && saying(instead)) return saying(instead);
    const next = seen(after)[0] ?? (parent.matches('li, form, .pair') ? seen(children)[0] : undefined);
    if (next) return next;
    if (parent.matches('asf-section, section, dialog')) {
      const heading = parent.querySelector('h2, h3');
      if (heading) return heading;
    }
    first = false;
  }
  return null;
}

function saying(element: Element): Element | null {
  return element.matches(SAYS) ? element : element.querySelector(SAYS);
}

function seen(among: readonly Element[]): Element[] {
  return among.flatMap((one) => [...(one.matches(TAKES) ? [one] : []), ...one.querySelectorAll(TAKES)]).filter((one) => one.checkVisibility());
}

function give(element: HTMLElement): void {
  if (element === document.body) return;
  if (!element.matches(TAKES) && !element.hasAttribute('tabindex')) element.setAttribute('tabindex', '-1');
  const byKey = document.documentElement.dataset['by'] !== 'touch';
  element.focus({ preventScroll: !byKey });
  // What only says that something is under way goes again by itself.
  remember(element);
  acted = true;
}
