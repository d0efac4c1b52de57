/** How a finished file can leave this app. */
export interface WaysOut { share: boolean; save: boolean }

/** An app on the home screen of iOS opens a saved file over itself, with no way back: there only the share sheet is safe. */
export function isStandaloneIos(): boolean {
  return 'standalone' in navigator && navigator.standalone === true;
}

/** Asked with the real file: what may be shared depends on its kind, and no list of kinds is the same everywhere. */
export function waysOut(file: File): WaysOut {
  return { share: canShare(file), save: !isStandaloneIos() };
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
