/** How a finished file can leave this app. */
export interface WaysOut {
  /** What the share sheet takes: the file, or the same bytes as another kind; null when it takes none. */
  share: File | null;
  /** It is shared under another name than its own. */
  renamed: boolean;
  /** `over`: saving opens it over the app, and that has to be said first; null: not offered, sharing is safe. */
  save: 'file' | 'over' | null;
}

/** An app on the home screen of iOS opens a saved file over itself, with no way back: there only the share sheet is safe. */
export function isStandaloneIos(): boolean {
  return 'standalone' in navigator && navigator.standalone === true;
}

/** Asked with the real file: what may be shared depends on its kind, and no list of kinds is the same everywhere. */
export function waysOut(file: File): WaysOut {
  if (!isStandaloneIos()) return { share: canShare(file) ? file : null, renamed: false, save: 'file' };
  const share = [file, ...otherwise(file)].find(canShare) ?? null;
  return { share, renamed: share !== null && share.name !== file.name, save: share ? null : 'over' };
}

/** The same bytes as kinds that more share sheets take; only the last needs another name. */
function otherwise(file: File): File[] {
  const as = (type: string, name = file.name): File => new File([file], name, { type });
  return [...(file.type.startsWith('text/') ? [] : [as('application/octet-stream')]), as('text/plain'), as('text/plain', `${file.name}.txt`)];
}

export function canShare(file: File): boolean {
  try {
    return typeof navigator.share === 'function' && navigator.canShare?.({ files: [file] }) === true;
  } catch {
    return false;
  }
}

export type Shared = 'shared' | 'cancelled' | { failed: string };

/** Opens the share sheet; must be called straight from a tap. Only the file is given: other members break it on one system. */
export async function share(file: File): Promise<Shared> {
  try {
    await navigator.share({ files: [file] });
    return 'shared';
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return 'cancelled';
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}
