import { newId } from '../../bridge/desk';
import type { Command } from '../../bridge/protocol';
import type { Slice } from '../speak/spoken-note';
import type { Bench } from './bench';

interface Begun { part: string; taken: number; isMade: boolean }

/**
 * Spoken notes at the strip. A note stays with the part that was in hand when it began. A slice that is not stored waits
 * in the strip to be tried again; the first one that is stored makes the note. Tells `stored`.
 */
export class SpokenNotes extends EventTarget {
  /** How many slices of the latest note are safe. */
  safe = 0;
  private latest = '';
  private readonly notes = new Map<string, Begun>();

  constructor(private readonly bench: Bench) {
    super();
  }

  /** The id of a new note; nothing while no part is in hand. */
  begin(): string | null {
    const { part } = this.bench;
    if (!part) return null;
    this.forget();
    this.latest = newId();
    this.notes.set(this.latest, { part, taken: Date.now(), isMade: false });
    return this.latest;
  }

  /** The latest note is no longer the one on the screen. */
  forget(): void {
    this.safe = 0;
    this.latest = '';
  }

  keep({ note, order, lasts, media_type, bytes }: Slice): void {
    const begun = this.notes.get(note);
    if (!begun) return;
    const { part, taken } = begun;
    const [id, command] = [newId(), newId()];
    const commands = (length: number): Command[] => [
      ...(begun.isMade ? [] : [{ do: 'create' as const, id: note, kind: 'note' as const, changes: [{ of: part }, { taken }] }]),
      { do: 'create', id, kind: 'slice', changes: [{ of: note }, { order }, { lasts }, { blob: '$0' }, { media_type }, { length }] },
    ];
    const save = (): void => {
      this.bench.put(part, ([blob]) => commands(blob?.bytes.byteLength ?? 0), ({ ok }) => {
        if (ok) this.stored(id, note, begun);
        else this.failed(id, part, save);
      }, { id: command, blobs: async () => [{ bytes: await bytes, media_type }] });
    };
    save();
  }

  private stored(id: string, note: string, begun: Begun): void {
    begun.isMade = true;
    this.bench.tiles.drop(id);
    if (note === this.latest) this.safe += 1;
    this.dispatchEvent(new Event('stored'));
  }

  private failed(id: string, part: string, save: () => void): void {
    const { tiles } = this.bench;
    const again = (): void => { tiles.set(id, { state: 'saving' }); save(); };
    if (tiles.find(id)) tiles.set(id, { state: 'failed' });
    else tiles.add({ id, part, src: '', state: 'failed', again });
  }
}
