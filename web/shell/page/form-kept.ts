import * as journal from './journal';

/**
 * Keeps what is typed in a form, and only what differs from what it began with: a value that another device writes meanwhile is not
 * overwritten by one that nobody touched. `together`: members that mean nothing without one another.
 */
export function keepForm(key: string, begin: Readonly<Record<string, string>>, draft: Readonly<Record<string, string>>, together: readonly (readonly string[])[] = []): void {
  const differs = (member: string): boolean => draft[member] !== begin[member];
  const kept = Object.keys(draft).filter((member) => differs(member) || together.some((group) => group.includes(member) && group.some(differs)));
  if (kept.length === 0) journal.typed(key);
  else journal.typing(key, JSON.stringify(Object.fromEntries(kept.map((member) => [member, draft[member]]))));
}

/** What was being typed in a form when the page was ended, over what it begins with. */
export function formKept<T extends Record<string, string>>(key: string, begin: T): T {
  try {
    const before: unknown = JSON.parse(journal.typedBefore(key) ?? 'null');
    return typeof before === 'object' && before !== null ? { ...begin, ...before } : begin;
  } catch {
    return begin;
  }
}
