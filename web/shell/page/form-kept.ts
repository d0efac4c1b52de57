import * as journal from './journal';

/** What was being typed in a form when the page was ended, over what it begins with. */
export function formKept<T extends Record<string, string>>(key: string, begin: T): T {
  try {
    const before: unknown = JSON.parse(journal.typedBefore(key) ?? 'null');
    return typeof before === 'object' && before !== null ? { ...begin, ...before } : begin;
  } catch {
    return begin;
  }
}
