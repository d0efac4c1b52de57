import { desk, newId, type Answer, type Beside } from '../../bridge/desk';
import type { Change, Command, JointView, Shot as ShotKind, TeardownView } from '../../bridge/protocol';
import type { Shot } from '../camera/viewfinder';
import * as journal from '../journal';
import { Orders } from './order';
import { DEEP, SaveQueue, type Work } from './save-queue';
import { Tiles } from './tile';

/** As many as stand side by side. */
export const SHOWN_NAMES = 2;

/** A kind of step at the strip. */
export type Step = 'photo' | 'piece' | 'value';

/** What a part begins with, as it was on the screen when it was first spoken of. */
interface Birth { assembly: string | null; tag: number | null }

/** The joint in hand, also before the record knows it. */
export interface JointInHand { id: string; name: string; pieces: number }

/**
 * What lies in hand at the strip: the assembly, the part, its tag. It keeps nothing that is not in the record or the journal.
 * Tells `bench` when something to be shown has changed.
 */
export class Bench extends EventTarget {
  view: TeardownView | null = null;
  shotKind: ShotKind = 'plain';
  readonly queue: SaveQueue;
  readonly tiles = new Tiles();

  /** What was stored last from here, to be taken back. */
  lastStep: { entry: string; what: Step } | null = null;

  /** Likely names; they keep their order under the thumb while the same part is in hand. */
  names: readonly string[] = [];

  private hand: journal.InHand;
  private namesOf: string | null = null;
  private readonly made = new Set<string>();
  private readonly births = new Map<string, Birth>();
  private joint: JointInHand | null = null;
  /** Made before the part it holds. */
  private looseJoint: string | null = null;
  /** The joint that was closed last; none is in hand until the next piece. */
  private closed: JointInHand | null = null;
  private readonly orders = new Orders();
  private asked = 0;

  constructor(readonly job: string) {
    super();
    this.hand = journal.inHand(job);
    this.queue = new SaveQueue(job);
    this.queue.addEventListener('depth', () => { this.tell(); });
  }

  /** The part in hand, recorded or about to be. */
  get part(): string | null {
    return this.hand.part ?? this.hand.draft?.id ?? null;
  }

  /** The number to be written on the bag; nothing until the record is read. */
  get tag(): number | null {
    const recorded = this.hand.part ? this.view?.part?.line.tag : undefined;
    return recorded ?? this.hand.draft?.tag ?? null;
  }

  /** The number after it. */
  get following(): number | null {
    if (!this.view) return null;
    return this.isRecorded ? this.view.next_tag : Math.max(this.view.next_tag, (this.tag ?? 0)) + 1;
  }

  get isRecorded(): boolean {
    return this.hand.part !== null && this.view?.part !== undefined;
  }

  get isDeep(): boolean {
    return this.queue.depth > DEEP;
  }

  /** The phone's own camera was out when the page ended. */
  get isWaiting(): boolean {
    return this.hand.waiting;
  }

  /** The joint in hand: the one last added to, else the last of the part. */
  get jointInHand(): JointInHand | null {
    if (this.closed) return null;
    const ofPart = this.view?.part?.record.id === this.part ? this.view?.part?.joints ?? [] : [];
    const known = [...this.view?.joints ?? [], ...ofPart];
    const found = known.find(({ record }) => record.id === this.joint?.id) ?? (this.joint ? undefined : ofPart[ofPart.length - 1]);
    if (!found) return this.joint;
    const pieces = found.pieces.filter(({ struck }) => !struck).length;
    return { id: found.record.id, name: found.record.values.name ?? '', pieces: Math.max(pieces, this.joint?.id === found.record.id ? this.joint.pieces : 0) };
  }

  /** The letter that the next joint gets. */
  get nextJointName(): string {
    return nextLetter([...this.view?.joints ?? [], ...this.view?.part?.joints ?? []], this.closed?.name);
  }

  /** Back at the strip: what the journal says is in hand, and what could not be stored is still here. */
  resume(): void {
    this.hand = journal.inHand(this.job);
    this.view = null;
    this.shotKind = 'plain';
    this.layDown();
    this.lastStep = null;
  }

  async refresh(): Promise<void> {
    const turn = ++this.asked;
    const { assembly, part } = this.hand;
    // Without an answer the last one stays; the desk tells of trouble by itself.
    const view = await desk.ask({ ask: 'teardown', assembly: assembly ?? undefined, part: part ?? undefined }).catch(() => null);
    if (turn !== this.asked || part !== this.hand.part || view?.view !== 'teardown') return;
    this.view = view;
    // Gone with a kill before it was saved, or struck out elsewhere: the strip begins anew.
    if (this.hand.part && (!view.part || view.part.record.struck)) this.hold({ part: null });
    if (this.hand.part === null) this.keepDraft(view.next_tag);
    this.offerNames(view.names);
    if (this.hand.assembly && !view.assembly) this.hold({ assembly: null });
    this.tell();
  }

  /** Takes up an assembly; the part in hand is laid down. */
  async take(assembly: string | null, part: string | null = null): Promise<void> {
    this.hold({ assembly, part, draft: null });
    this.layDown();
    await this.refresh();
  }

  /** Closes the part in hand and opens the next. False when there is nothing to close yet. */
  nextTag(): boolean {
    const busy = this.part !== null && (this.isRecorded || this.tiles.of(this.part).length > 0 || this.made.has(this.part));
    if (!busy) return false;
    const tag = this.following ?? 1;
    this.hold({ part: null, draft: { id: newId(), tag } });
    this.layDown();
    this.shotKind = 'plain';
    this.tell();
    void this.refresh();
    return true;
  }

  /** Records a picture of the part in hand; the first one makes the part. */
  photo(picture: Shot, moment: 'before' | 'off' = this.view?.part?.record.values.off === false ? 'before' : 'off'): void {
    const { part, shotKind: shot } = this;
    if (!part) return;
    this.bear(part);
    const id = newId();
    const command = newId();
    const taken = Date.now();
    const order = this.orders.next(part, this.view?.part?.record.id === part ? this.view.part.photos.map(({ record }) => record) : []);
    const save = (): void => {
      this.queue.add({
        id: command,
        blobs: async () => [await picture.bytes],
        command: ([blob]) => this.withPart(part, [{ do: 'create', id, kind: 'photo', changes: [
          { of: part }, { moment }, { shot }, { taken }, { order }, { blob: '$0' },
          ...(blob ? [{ length: blob.bytes.byteLength }, { media_type: blob.media_type }] : [])] }]),
        settled: (answer) => { this.settle(id, part, answer); },
      });
    };
    const again = (): void => { this.tiles.set(id, { state: 'saving' }); save(); };
    this.tiles.add({ id, part, src: '', state: 'saving', again });
    void picture.small.then((small) => { this.tiles.set(id, { src: URL.createObjectURL(small) }); this.tell(); }, () => undefined);
    save();
  }

  /** Writes values of the part in hand, which is made when there is none yet. */
  write(changes: Change[], then?: (answer: Answer) => void): void {
    const { part } = this;
    if (!part) return;
    this.put(part, () => this.isThere(part) ? [{ do: 'change', ids: [part], changes }] : [this.making(part, changes)], then);
  }

  /** Does more that needs the part in hand; it is made first when there is none yet. */
  put(part: string, commands: (blobs: readonly Beside[]) => Command[], then?: (answer: Answer) => void, more: Pick<Work, 'blobs' | 'id'> = {}): void {
    this.bear(part);
    this.queue.add({
      ...more,
      command: (ready) => this.withPart(part, commands(ready)),
      settled: (answer) => {
        this.madeOf(part, answer);
        this.step(answer, 'value');
        then?.(answer);
        this.dispatchEvent(new CustomEvent<Answer>('settled', { detail: answer }));
        void this.refresh();
      },
    });
  }

  /** One more piece of the joint in hand has come off; the first one makes the joint. */
  addPiece(): void {
    const before = this.jointInHand;
    const joint = before ?? { id: newId(), name: this.nextJointName, pieces: 0 };
    this.joint = { ...joint, pieces: joint.pieces + 1 };
    this.closed = null;
    const { part, hand: { assembly } } = this;
    const create = (isThere: boolean): Command => ({ do: 'create', id: joint.id, kind: 'joint', changes: [
      { name: joint.name }, ...(assembly ? [{ assembly }] : []), ...(part && isThere ? [{ of: part }] : []) ] });
    const piece: Command = { do: 'create', id: newId(), kind: 'piece', changes: [{ joint: joint.id }, { order: joint.pieces + 1 }] };
    this.queue.add({
      command: () => {
        if (before) return { do: 'all', commands: [piece] };
        const isThere = part !== null && this.isThere(part);
        if (!isThere) this.looseJoint = joint.id;
        return { do: 'all', commands: [create(isThere), piece] };
      },
      settled: (answer) => { this.pieceSettled(joint.id, answer); this.step(answer, 'piece'); },
    });
    this.tell();
  }

  /** The next piece begins a joint of its own. */
  closeJoint(): void {
    const closed = this.jointInHand;
    this.layDown();
    this.closed = closed;
    this.tell();
  }

  private layDown(): void {
    [this.joint, this.closed] = [null, null];
  }

  /** Takes back what was stored last from here. */
  async undo(): Promise<boolean> {
    const step = this.lastStep;
    if (!step) return false;
    this.lastStep = null;
    this.layDown();
    const { ok } = await desk.command({ do: 'undo', entry: step.entry });
    await this.refresh();
    return ok;
  }

  /** Noted before the phone's own camera opens, in case the page does not live to see it close. */
  wait(waiting: boolean): void {
    this.hold({ waiting });
    this.tell();
  }

  private pieceSettled(joint: string, answer: Answer): void {
    // Not stored: the count must not say so.
    if (!answer.ok) this.joint = null;
    if (!answer.ok && this.looseJoint === joint) this.looseJoint = null;
    this.dispatchEvent(new CustomEvent<Answer>('settled', { detail: answer }));
    void this.refresh();
  }

  private offerNames(learnt: readonly string[]): void {
    const name = this.view?.part?.line.name;
    const isSame = this.namesOf === this.part && this.names.length >= Math.min(SHOWN_NAMES, learnt.length);
    if (!isSame) this.names = learnt.slice(0, SHOWN_NAMES);
    this.namesOf = this.part;
    if (name && this.isRecorded && !this.names.includes(name)) this.names = [name, ...this.names].slice(0, SHOWN_NAMES);
  }

  private step({ ok, entry }: Answer, what: Step): void {
    if (ok && entry) this.lastStep = { entry, what };
  }

  private settle(photo: string, part: string, answer: Answer): void {
    this.tiles.set(photo, { state: answer.ok ? 'kept' : 'failed' });
    this.madeOf(part, answer);
    this.step(answer, 'photo');
    this.dispatchEvent(new CustomEvent<Answer>('settled', { detail: answer }));
    void this.refresh();
  }

  private madeOf(part: string, { ok }: Answer): void {
    if (!ok) return;
    // Whatever lay loose when the part was made was joined to it.
    if (!this.isThere(part)) this.looseJoint = null;
    this.made.add(part);
    if (this.hand.draft?.id === part) this.hold({ part, draft: null });
  }

  private withPart(part: string, commands: Command[]): Command {
    if (this.isThere(part)) return { do: 'all', commands };
    const isMaking = commands.some((one) => one.do === 'create' && one.id === part);
    const making = isMaking ? [] : [this.making(part, [])];
    return { do: 'all', commands: [...making, ...commands, ...this.joinJoint(part)] };
  }

  private isThere(part: string): boolean {
    return this.made.has(part) || this.hand.part === part;
  }

  // Its turn to be saved may come when another assembly and another tag are in hand already.
  private bear(part: string): void {
    const { assembly, draft } = this.hand;
    if (!this.births.has(part) && !this.isThere(part)) this.births.set(part, { assembly, tag: draft?.id === part ? draft.tag : null });
  }

  private making(part: string, changes: Change[]): Command {
    const { assembly, tag } = this.births.get(part) ?? { assembly: null, tag: null };
    return { do: 'create', id: part, kind: 'part', changes: [...(assembly ? [{ assembly }] : []), ...(tag === null ? [] : [{ tag }]), ...changes] };
  }

  // Hardware often comes off before the part has its first photo.
  private joinJoint(part: string): Command[] {
    const joint = this.looseJoint;
    return joint ? [{ do: 'change', ids: [joint], changes: [{ of: part }] }] : [];
  }

  private keepDraft(next: number): void {
    const { draft } = this.hand;
    const isBusy = draft !== null && this.tiles.of(draft.id).some(({ state }) => state === 'saving');
    // While something is still being saved the record does not know the latest tag. And a number once shown may stand on a
    // bag already: it gives way only to one that is taken.
    if (isBusy || (draft && (this.queue.depth > 0 || draft.tag >= next))) return;
    const birth = draft && this.births.get(draft.id);
    if (birth) birth.tag = next;
    this.hold({ draft: { id: draft?.id ?? newId(), tag: next } });
  }

  private hold(hand: Partial<journal.InHand>): void {
    this.hand = { ...this.hand, ...hand };
    journal.hold(this.job, hand);
  }

  private tell(): void {
    this.dispatchEvent(new Event('bench'));
  }
}

const benches = new Map<string, Bench>();

/** The bench of a job. It outlives the screen: what could not be stored yet must not go with it. */
export function benchOf(job: string): Bench {
  const bench = benches.get(job) ?? new Bench(job);
  benches.set(job, bench);
  bench.resume();
  return bench;
}

function nextLetter(joints: readonly JointView[], closed: string | undefined): string {
  const used = new Set([closed, ...joints.map(({ record }) => record.values.name)]);
  for (let i = 0; ; i += 1) {
    const letter = String.fromCharCode(65 + (i % 26)) + (i < 26 ? '' : String(Math.floor(i / 26)));
    if (!used.has(letter)) return letter;
  }
}
