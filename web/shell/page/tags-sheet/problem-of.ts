import { CallFailed } from '../../bridge/line';
import type { Problem } from '../../bridge/protocol';

/** The problem that a worker threw; null when something else went wrong. */
export function problemOf(error: unknown): Problem | null {
  if (!(error instanceof CallFailed)) return null;
  try {
    const read: unknown = JSON.parse(error.failure.detail);
    return isProblem(read) ? read : null;
  } catch {
    return null;
  }
}

function isProblem(value: unknown): value is Problem {
  return typeof value === 'object' && value !== null && 'code' in value && 'severity' in value && 'place' in value && 'values' in value && 'hints' in value;
}
