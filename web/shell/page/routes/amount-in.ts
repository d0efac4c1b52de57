import type { RateBasis, Rated } from '../../bridge/protocol';

// Exact by definition: international yard and pound, 1959. Pieces, square millimetres and grams in one.
const ONE: Record<RateBasis, number> = {
  piece: 1, 'square-centimetre': 100, 'square-decimetre': 10_000, 'square-metre': 1_000_000, 'square-inch': 645.16, 'square-foot': 92_903.04, kilogram: 1000, pound: 453.592_37,
};

/** How much a price at a rate is for, in what the rate is for one of. */
export function amountIn({ amount, basis }: Pick<Rated, 'amount' | 'basis'>): number {
  return amount / ONE[basis];
}
