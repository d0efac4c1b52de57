import { desk, newId } from '../../bridge/desk';
import type { Change, Command, CountView, PlaceLine, StoredLine, TagView } from '../../bridge/protocol';
import type { Heard } from '../camera/feedback';
import { carryOut } from '../carry-out';
import { tagFigures as figures } from '../parts/tag-figures';
import { bringsNew } from '../stores/brings-new';
import { nameOf } from '../stores/place-chooser';
import { today } from '../today';
import { words } from '../words';

export type Mode = 'open' | 'move' | 'count';

/** One thing that carries a tag. */
export type Thing = { kind: 'part'; part: StoredLine } | { kind: 'place'; place: PlaceLine };

/** What the person is to say before anything is done. */
export type Asked = { ask: 'sure'; thing: Thing } | { ask: 'which'; things: Thing[] } | { ask: 'unknown'; code: string; number: number };

/** The large sign: what was read, and what was done. */
export interface Sign {
  state: 'saving' | 'done' | 'amiss' | 'wrong' | 'asked';
  /** The figures of its tag; empty for a place. */
  tag: string;
  said: string;
  todo: string;
  asked?: Asked;
}

/**
 * What is scanned, one after the other, and what comes of it. Everything is stored before it is said to be done. Tells `session` when
 * something to be shown has changed, `heard` with what is to be heard, `go` with an address to go to.
 */
export class Session extends EventTarget {
  sign: Sign | null = null;
  /** Parts and boxes picked up, to be laid in the next place. */
  hand: Thing[] = [];
  count: CountView | null = null;
  /** What was done last from here, to be taken back; `made` by it was this thing. */
  last: { entry: string; what: string; made?: string } | null = null;
  private queue: Promise<void> = Promise.resolve();

  constructor(public mode: Mode) { super(); }

  /** Changes what a tag does; what is in hand is put down. */
  turn(mode: Mode): void {
    [this.mode, this.hand, this.sign] = [mode, [], null];
    this.tell();
  }

  /** Takes up a part at once, as if it had been scanned. */
  pick(part: string): Promise<void> {
    return this.after(async () => {
      const view = await desk.ask({ ask: 'where', part });
      if (view.view === 'where') await this.use({ kind: 'part', part: view.part });
    });
  }

  /** Goes on with a count. */
  goOn(count: string): Promise<void> {
    return this.after(async () => {
      await this.refresh(count);
      if (this.count) this.show('done', '', words().scan.countOn(nameOf(this.count.place)));
    });
  }

  /** Begins a count of a place; one that is under way goes on. */
  begin(place: string): Promise<void> {
    return this.after(() => this.beginCount(place));
  }

  /** Codes that were read together: parts come before the place they go into. */
  scanned(codes: readonly string[]): Promise<void> {
    return this.after(async () => {
      const views: TagView[] = [];
      for (const text of codes) {
        const view = await desk.ask({ ask: 'tag', text, scanned: true });
        if (view.view === 'tag') views.push(view);
      }
      // Only one can be opened; which of them is meant the camera does not know.
      const seen = this.mode === 'open' ? [...new Map(views.flatMap(thingsOf).map((thing) => [idOf(thing), thing])).values()] : [];
      if (seen.length > 1 && views.length > 1) {
        const say = words().scan;
        this.ask({ ask: 'which', things: seen }, '', say.several, say.severalTodo, 'amiss');
        return;
      }
      const isPlace = (view: TagView): boolean => view.places.length > 0 && view.parts.length === 0;
      for (const view of [...views.filter((one) => !isPlace(one)), ...views.filter(isPlace)]) await this.read(view);
    });
  }

  /** A code that was typed; one without its check character is asked about. */
  typed(text: string): Promise<void> {
    return this.after(async () => {
      const view = await desk.ask({ ask: 'tag', text });
      if (view.view === 'tag') await this.read(view, text);
    });
  }

  /** The person has said which thing it is. */
  answer(thing: Thing): Promise<void> {
    return this.after(() => this.use(thing));
  }

  putDown(): void {
    this.hand = [];
    this.show('done', '', words().scan.putDownDone);
  }

  /** The camera sees, but nothing reads what it sees. */
  unreadable(): void {
    const say = words().scan;
    this.show('wrong', '', say.unreadable, say.unreadableTodo);
  }

  /** It is tried again. */
  readAgain(): void {
    if (this.sign?.said !== words().scan.unreadable) return;
    this.sign = null;
    this.tell();
  }

  /** A new part, or a new place, that carries a tag. */
  make(kind: 'part' | 'place', number: number, code: string): Promise<void> {
    return this.after(async () => {
      const say = words().scan;
      const [id, name] = [newId(), say.newPlaceName(figures(number))];
      const changes: Change[] = kind === 'part' ? [{ tag: number }] : [{ tag: number }, { name }, { place_kind: 'box' }];
      const said = kind === 'part' ? say.newPartMade(code) : say.newPlaceMade(name);
      if (await this.done({ do: 'create', id, kind, changes }, 'done', kind === 'part' ? figures(number) : '', said)) await this.useCode(code);
    });
  }

  /** A part gets this tag in place of its own. */
  give(part: string, name: string, number: number, code: string): Promise<void> {
    return this.after(async () => {
      if (await this.done({ do: 'change', ids: [part], changes: [{ tag: number }] }, 'done', figures(number), words().scan.gaveTo(code, name))) await this.useCode(code);
    });
  }

  /** Takes back what was stored last from here. */
  undo(): Promise<void> {
    return this.after(async () => {
      const { last } = this;
      const say = words().scan;
      if (!last) return;
      this.last = null;
      const { ok } = await carryOut({ do: 'undo', entry: last.entry });
      // What was taken back may be the very thing in hand: the next place must not write to it. The others stay.
      if (ok) this.hand = this.hand.filter((thing) => idOf(thing) !== last.made);
      await this.refresh();
      this.show(ok ? 'done' : 'wrong', '', ok ? say.undoneName(last.what) : say.failed);
    });
  }

  /** Ends the count; true once that is stored. */
  async end(): Promise<boolean> {
    let ended = false;
    await this.after(async () => {
      const { count } = this;
      if (!count) return;
      const { ok } = await carryOut({ do: 'change', ids: [count.record.id], changes: [{ ended: Date.now() }] }, words().scan.ended(nameOf(count.place)));
      ended = ok;
    });
    return ended;
  }

  /** Something was recorded elsewhere. */
  async refresh(count = this.count?.record.id): Promise<void> {
    if (!count) return;
    const view = await desk.ask({ ask: 'count', count }).catch(() => null);
    this.count = view?.view === 'count' && !view.record.struck && view.sums.ended === undefined ? view : null;
    this.tell();
  }

  private async read(view: TagView, typed = ''): Promise<void> {
    const say = words().scan;
    const { number, code = '' } = view;
    if (number === undefined) {
      const isWrong = view.read.read === 'wrong-check';
      this.show('wrong', '', (isWrong ? say.wrongCheck : say.notOurs)(typed), isWrong ? say.wrongCheckTodo : say.notOursTodo);
      return;
    }
    const things = thingsOf(view);
    const [first] = things;
    if (!first) this.ask({ ask: 'unknown', code, number }, figures(number), say.unknown(code), say.unknownTodo, 'amiss');
    else if (things.length > 1) this.ask({ ask: 'which', things }, figures(number), say.both(code), say.bothTodo, 'amiss');
    else if (view.read.read === 'number') this.ask({ ask: 'sure', thing: first }, tagOf(first), say.unsure(nameOfThing(first)), say.unsureTodo, 'taken');
    else await this.use(first);
  }

  private async useCode(code: string): Promise<void> {
    const view = await desk.ask({ ask: 'tag', text: code });
    if (this.mode !== 'open' && view.view === 'tag') await this.read(view);
  }

  private async use(thing: Thing): Promise<void> {
    if (this.mode === 'open') this.open(thing);
    else if (this.mode === 'move') await this.move(thing);
    else if (this.count) await this.see(thing, this.count);
    else if (thing.kind === 'place') await this.beginCount(thing.place.record.id);
    else this.show('wrong', tagOf(thing), nameOfThing(thing), words().scan.needPlace);
  }

  private open(thing: Thing): void {
    this.show('done', tagOf(thing), words().scan.opening(nameOfThing(thing)));
    this.dispatchEvent(new CustomEvent('go', { detail: thing.kind === 'part' ? `#/part/${thing.part.line.id}` : `#/stores/${thing.place.record.id}` }));
  }

  private async move(thing: Thing): Promise<void> {
    const say = words().scan;
    if (thing.kind === 'place' && this.hand.length > 0) {
      await this.lay(thing.place);
      return;
    }
    if (this.hand.some((one) => idOf(one) === idOf(thing))) {
      this.show('done', tagOf(thing), say.inHandAgain(nameOfThing(thing)), say.nowPlace);
      return;
    }
    if (isFitted(thing)) {
      this.show('wrong', tagOf(thing), say.isFitted(nameOfThing(thing)), say.isFittedTodo);
      return;
    }
    this.hand = [...this.hand, thing];
    this.show('done', tagOf(thing), say.taken(nameOfThing(thing)), say.nowPlace);
  }

  private async lay(place: PlaceLine): Promise<void> {
    const say = words().scan;
    const target = place.record.id;
    const into = new Set([target, ...await wayTo(target)]);
    const own = this.hand.find((thing) => thing.kind === 'place' && into.has(idOf(thing)));
    if (own) {
      this.show('wrong', '', say.intoItself(nameOfThing(own)), say.intoItselfTodo);
      return;
    }
    const [only] = this.hand;
    const said = this.hand.length === 1 && only ? say.moved(nameOfThing(only), nameOf(place)) : say.movedMany(this.hand.length, nameOf(place));
    const commands = this.hand.flatMap((thing) => layIn(thing, target));
    if (await this.done({ do: 'all', commands }, 'done', this.hand.length === 1 && only ? tagOf(only) : '', said)) {
      this.hand = [];
      this.tell();
    }
  }

  private async beginCount(place: string): Promise<void> {
    const view = await desk.ask({ ask: 'place', place });
    if (view.view !== 'place') return;
    const say = words().scan;
    const name = nameOf(view.line);
    if (view.running) {
      await this.refresh(view.running.count);
      this.show('done', '', say.countOn(name));
      return;
    }
    const id = newId();
    if (await this.done({ do: 'create', id, kind: 'count', changes: [{ of: place }, { taken: Date.now() }] }, 'done', '', say.countBegun(name))) await this.refresh(id);
  }

  private async see(thing: Thing, count: CountView): Promise<void> {
    const say = words().scan;
    const place = count.place.record.id;
    if (thing.kind === 'place' && thing.place.record.id === place) {
      this.show('done', '', say.countOn(nameOf(count.place)));
      return;
    }
    const known = lineOf(count, thing);
    if (known?.sighting) {
      this.show('done', tagOf(thing), nameOfThing(thing), say.again);
      return;
    }
    const isForeign = known === undefined;
    const said = thing.kind === 'place' ? (isForeign ? say.foreignBox : say.withBag) : isForeign ? say.foreign(thing.part.lies === 'place' ? thing.part.line.place.at(-1) ?? '' : '') : say.here;
    const sighting: Command = { do: 'create', id: newId(), kind: 'sighting', changes: [{ of: idOf(thing) }, { place }, { in_count: count.record.id }, { taken: Date.now() }] };
    if (await this.done(sighting, isForeign ? 'amiss' : 'done', tagOf(thing), nameOfThing(thing), said)) await this.refresh();
  }

  /** Stores it first; only then the sign says that it is done. */
  private async done(command: Command, state: 'done' | 'amiss', tag: string, said: string, todo = ''): Promise<boolean> {
    this.sign = { state: 'saving', tag, said: words().scan.saving, todo: said };
    this.tell();
    const { ok, entry } = await carryOut(command);
    if (ok && entry) this.last = { entry, what: said, ...(command.do === 'create' && { made: command.id }) };
    // Large stands what is so: that it is not stored, never what it would have been.
    if (ok) this.show(state, tag, said, todo);
    else this.show('wrong', tag, words().scan.failed, said);
    return ok;
  }

  private ask(asked: Asked, tag: string, said: string, todo: string, heard: Heard): void {
    this.sign = { state: 'asked', tag, said, todo, asked };
    this.dispatchEvent(new CustomEvent<Heard>('heard', { detail: heard }));
    this.tell();
  }

  private show(state: 'done' | 'amiss' | 'wrong', tag: string, said: string, todo = ''): void {
    this.sign = { state, tag, said, todo };
    this.dispatchEvent(new CustomEvent<Heard>('heard', { detail: state === 'done' ? 'taken' : state }));
    this.tell();
  }

  // One after the other: a tag must not overtake the one before it.
  private after(work: () => Promise<void>): Promise<void> {
    this.queue = this.queue.then(work).catch(() => {
      // The desk tells of trouble by itself; the sign must not say that it was done.
      this.show('wrong', '', words().scan.failed);
    });
    return this.queue;
  }

  private tell(): void {
    this.dispatchEvent(new Event('session'));
  }
}

function thingsOf(view: TagView): Thing[] {
  return [...view.parts.map((part) => ({ kind: 'part' as const, part })), ...view.places.map((place) => ({ kind: 'place' as const, place }))];
}

export function idOf(thing: Thing): string {
  return thing.kind === 'part' ? thing.part.line.id : thing.place.record.id;
}

export function nameOfThing(thing: Thing): string {
  return thing.kind === 'part' ? thing.part.line.name || words().scan.noName : nameOf(thing.place);
}

export function tagOf(thing: Thing): string {
  return thing.kind === 'part' && thing.part.line.tag !== undefined ? figures(thing.part.line.tag) : '';
}

/** On for good, and not the old piece of what went on in its place: it would stay refitted wherever it was laid. */
function isFitted(thing: Thing): boolean {
  return thing.kind === 'part' && thing.part.lies === 'refitted' && !bringsNew(thing.part.line);
}

/** What is laid down is in again, where it was out of the house. */
function layIn(thing: Thing, place: string): Command[] {
  if (thing.kind === 'place') return [{ do: 'change', ids: [idOf(thing)], changes: [{ within: place }] }];
  const { out } = thing.part;
  const back: Command[] = out ? [{ do: 'change', ids: [out.id], changes: [{ arrived: today() }] }] : [];
  return [...back, { do: 'change', ids: [idOf(thing)], changes: [{ place }] }];
}

function lineOf(count: CountView, thing: Thing): { sighting?: string } | undefined {
  const line = thing.kind === 'part' ? count.lines.find((one) => one.line.id === idOf(thing)) : count.places.find((one) => one.line.record.id === idOf(thing));
  return line && line.counted !== 'foreign' || line?.sighting ? line : undefined;
}

async function wayTo(place: string): Promise<string[]> {
  const view = await desk.ask({ ask: 'place', place });
  return view.view === 'place' ? view.way.map(({ id }) => id) : [];
}
