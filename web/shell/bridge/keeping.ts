import type { View } from './protocol.ts';

/** How safe the record is, for the person to see. */
export interface Keeping {
  /** Whether the browser has promised not to throw it away; null where it does not say. */
  persisted: boolean | null;
  usage: number | null;
  quota: number | null;
  photos: number;
  entries: number;
  /** When the last job file was made. */
  handed_out: number | null;
  photos_since: number;
  /** True where this window is known to forget; not every browser tells. */
  private_window: boolean;
}

let asked = false;

/** Asks the browser to keep everything, once a start. Never waited for: one engine asks the person, and may never answer. */
export function askToPersist(): void {
  if (asked) return;
  asked = true;
  void navigator.storage?.persist?.().catch(() => undefined);
}

export async function keeping(head: View): Promise<Keeping> {
  const [persisted, estimate, private_window] = await Promise.all([persistedNow(), estimateNow(), forgets()]);
  const job = head.view === 'head' ? head : undefined;
  return {
    persisted,
    usage: estimate.usage ?? null,
    quota: estimate.quota ?? null,
    photos: job?.photos ?? 0,
    entries: job?.entries ?? 0,
    handed_out: job?.handed_out ?? null,
    photos_since: job?.photos_since ?? 0,
    private_window,
  };
}

async function persistedNow(): Promise<boolean | null> {
  try {
    return (await navigator.storage?.persisted?.()) ?? null;
  } catch {
    return null;
  }
}

async function estimateNow(): Promise<StorageEstimate> {
  try {
    return (await navigator.storage?.estimate?.()) ?? {};
  } catch {
    return {};
  }
}

/** Two engines refuse the private file system in private windows, in these words; the third does not tell. */
async function forgets(): Promise<boolean> {
  try {
    await navigator.storage?.getDirectory?.();
    return false;
  } catch (error) {
    return error instanceof DOMException && error.name === 'SecurityError';
  }
}
