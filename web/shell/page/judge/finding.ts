import { desk, newId } from '../../bridge/desk';
import type { AskedView, Change, Command, InspectView, Seen } from '../../bridge/protocol';
import type { Picture } from '../camera/pictures-in';
import { fieldOf } from '../sheet/write';
import { whoDecides } from '../routes/who-dialog';

/** Writes what was found: over the record of the same question where there is one, so that its photos stay with it. */
export function finding(part: string, { question, finding: known }: AskedView, changes: readonly Change[], id = newId()): Command {
  const who = whoDecides();
  const about: Change[] = [...changes, { taken: Date.now() }, ...(who ? [{ who }] : [])];
  if (!known) return { do: 'create', id, kind: 'finding', changes: [{ of: part }, { question }, ...about] };
  const seen: Seen = Object.fromEntries(about.map((change) => [fieldOf(change), known.seen[fieldOf(change)] ?? []]));
  return { do: 'change', ids: [known.id], changes: about, seen };
}

/** An answer; it takes back that the question was left out. */
export const answering = (part: string, asked: AskedView, outcome: string): Command =>
  finding(part, asked, [{ outcome }, ...(asked.skipped ? [{ skipped: false }] : [])]);

/** The question is left out; an answer that it had is taken back. */
export const leavingOut = (part: string, asked: AskedView): Command =>
  finding(part, asked, [{ skipped: true }, ...(asked.answer ? [{ clear: 'outcome' } as const] : [])]);

/** A photo that shows what was found. Worked out from the part as it stands now: the question may have been answered since. */
export async function photoOf(part: string, question: string, taken: number, { bytes, media_type }: Picture): Promise<Command> {
  const [judged, whole] = await Promise.all([desk.ask({ ask: 'inspect', part }), desk.ask({ ask: 'part', part })]);
  const asked = judged.view === 'inspect' ? askedOf(judged, question) : undefined;
  const order = whole.view === 'part' ? Math.max(0, ...whole.photos.map(({ record }) => record.values.order ?? 0)) + 1 : 1;
  const id = asked?.finding?.id ?? newId();
  // A photo alone answers nothing: its question stays open.
  const first = asked && !asked.finding ? [finding(part, asked, [], id)] : [];
  return { do: 'all', commands: [...first, { do: 'create', id: newId(), kind: 'photo', changes: [
    { of: part }, { finding: id }, { moment: 'off' }, { shot: 'plain' }, { taken }, { order }, { blob: '$0' }, { length: bytes.byteLength }, { media_type }] }] };
}

function askedOf({ asked }: InspectView, question: string): AskedView | undefined {
  return asked.find((one) => one.question === question);
}
