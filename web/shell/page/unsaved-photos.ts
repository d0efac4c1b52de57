import { desk, newId } from '../bridge/desk';
import type { Command } from '../bridge/protocol';
import type { Picture } from './camera/pictures-in';
import { carryOut } from './carry-out';

interface Photo {
  job: string | null;
  /** The same for each try, so that what was stored unseen is not stored twice. */
  id: string;
  picture: Picture;
  command: () => Command | Promise<Command>;
  message: string;
}

/**
 * Photos taken away from the strip that could not be stored: they stay in the page, whatever place is shown, until they are.
 * Tells `unsaved` when there are more or fewer.
 */
class UnsavedPhotos extends EventTarget {
  /** Pictures that could not be read in the first place: there is nothing to try again with. */
  unread = 0;
  private photos: Photo[] = [];
  private busy = false;
  private last: Promise<void> = Promise.resolve();

  /** Those of the open job. */
  get count(): number {
    return this.photos.filter(isOfOpenJob).length;
  }

  /** Stores a picture; one that is not stored stays here. The command is worked out anew at each try. */
  async save(picture: Promise<Picture>, command: (picture: Picture) => Command | Promise<Command>, message: string): Promise<void> {
    const job = desk.current();
    const read = await picture.catch(() => null);
    if (read) await this.put({ job, id: newId(), picture: read, command: () => command(read), message });
    else this.countUnread(this.unread + 1);
  }

  /** It is known now that they could not be read. */
  forgetUnread(): void {
    this.countUnread(0);
  }

  async again(): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    for (const photo of this.photos.filter(isOfOpenJob)) await this.put(photo);
    this.busy = false;
  }

  private put(photo: Photo): Promise<void> {
    // One after the other: many at once would make each look late.
    this.last = this.last.then(() => this.putNow(photo));
    return this.last;
  }

  private async putNow(photo: Photo): Promise<void> {
    const ok = await tried(photo);
    this.photos = this.photos.filter((one) => one !== photo);
    if (!ok) this.photos.push(photo);
    this.dispatchEvent(new Event('unsaved'));
  }

  private countUnread(unread: number): void {
    this.unread = unread;
    this.dispatchEvent(new Event('unsaved'));
  }
}

async function tried(photo: Photo): Promise<boolean> {
  try {
    const command = await photo.command();
    // Another job was opened meanwhile: it waits until its own is.
    if (!isOfOpenJob(photo)) return false;
    const { ok } = await carryOut(command, photo.message, [photo.picture], photo.id);
    return ok;
  } catch {
    // The desk tells of trouble by itself.
    return false;
  }
}

function isOfOpenJob({ job }: Photo): boolean {
  return job === desk.current();
}

export const unsavedPhotos = new UnsavedPhotos();
