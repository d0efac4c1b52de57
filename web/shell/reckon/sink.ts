// Where a large file grows, piece by piece. On the disk where the engine has a
// private file system; else as parts that it may move to the disk by itself.

export interface Sink {
  write(bytes: Uint8Array<ArrayBuffer>): void;
  file(name: string, type: string): Promise<File>;
  discard(): Promise<void>;
}

const FOLDER = 'scratch';
const OLD_MS = 60 * 60 * 1000;
const PART = 8 << 20;

export async function newSink(): Promise<Sink> {
  try {
    return await onDisk();
  } catch {
    // No private file system here, or it is refused in this window.
    return inParts();
  }
}

async function onDisk(): Promise<Sink> {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle(FOLDER, { create: true });
  await tidy(folder);
  const name = `${Date.now()}-${crypto.randomUUID()}`;
  const handle = await folder.getFileHandle(name, { create: true });
  const access = await handle.createSyncAccessHandle();
  let at = 0;
  return {
    write(bytes) {
      const written = access.write(bytes, { at });
      if (written !== bytes.length) throw new DOMException('the file cannot grow', 'QuotaExceededError');
      at += written;
    },
    async file(called, type) {
      access.flush();
      access.close();
      return new File([await handle.getFile()], called, { type });
    },
    async discard() {
      access.close();
      await folder.removeEntry(name);
    },
  };
}

/** Files of earlier times that nobody took; a fresh one may still be in somebody's hands. */
async function tidy(folder: FileSystemDirectoryHandle): Promise<void> {
  for await (const name of folder.keys()) {
    if (Date.now() - Number.parseInt(name, 10) > OLD_MS) await folder.removeEntry(name).catch(() => undefined);
  }
}

function inParts(): Sink {
  let parts: Blob[] = [];
  let open: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  const close = (): void => {
    parts.push(new Blob(open));
    open = [];
    size = 0;
  };
  return {
    write(bytes) {
      open.push(bytes);
      size += bytes.length;
      if (size >= PART) close();
    },
    async file(called, type) {
      close();
      return new File(parts, called, { type });
    },
    async discard() {
      parts = [];
      open = [];
    },
  };
}
