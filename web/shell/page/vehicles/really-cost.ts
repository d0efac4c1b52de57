import type { Money, Values } from '../../bridge/protocol';

/** What a donor came to in the end: what was paid less what its surplus brought. Nothing while no price is known, or sums are in two currencies. */
export function reallyCost({ cash, sold }: Pick<Values, 'cash' | 'sold'>): Money | null {
  if (!cash || (sold && sold.currency !== cash.currency)) return null;
  return { minor: cash.minor - (sold?.minor ?? 0), currency: cash.currency };
}
