import type { Beside } from '../bridge/calls.ts';
import type { Sent } from '../bridge/protocol.ts';
import { hashOf, type BesideCommand } from '../pkg/record/record.js';

/** Gives the bytes that come with a command their names, and puts the names where the command says "$0", "$1". */
export async function nameBesides(sent: Sent, beside: Beside[]): Promise<{ sent: Sent; beside: BesideCommand[] }> {
  const named = beside.map(({ bytes, media_type }) => ({ hash: hashOf(new Uint8Array(bytes)), media_type, bytes }));
  const names = new Map(named.map(({ hash }, index) => [`$${index}`, hash]));
  return { sent: named.length === 0 ? sent : replaced(sent, names), beside: named };
}

// Only the member `blob` is looked at: words that a person types stay as they are.
function replaced<T>(value: T, names: Map<string, string>): T {
  if (Array.isArray(value)) return value.map((one: unknown) => replaced(one, names)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, inner]: [string, unknown]) => {
    const name = key === 'blob' && typeof inner === 'string' ? names.get(inner) : undefined;
    return [key, name ?? replaced(inner, names)];
  });
  return Object.fromEntries(entries) as T;
}
