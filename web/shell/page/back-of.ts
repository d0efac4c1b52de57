import type { Address } from './places';

/** Where a page may be told that it was opened from: a place of this app, one thing of it, one step of that. Nothing else is followed. */
const KNOWN = /^(?:teardown|assemblies|before|parts|part|stores|where|missing|refit)(?:\/[\w-]{1,64})?(?:\?(?:step|into)=[\w-]{1,64})?$/;

/** Where back leads: to where the page was opened from, where its address says so; else as it always does. */
export function backOf(address: Pick<Address, 'search'> | undefined, fallback: string): string {
  const from = address?.search.get('from') ?? '';
  return KNOWN.test(from) ? `#/${from}` : fallback;
}

/** A link that is told where it was opened from. */
export function openedFrom(href: string, from: string): string {
  return `${href}${href.includes('?') ? '&' : '?'}from=${encodeURIComponent(from.replace(/^#\//, ''))}`;
}
