import type { Vocabulary } from './vocabulary';

/** How original it must be. */
export const aims = (trade: Vocabulary) => ({
  label: 'Aim',
  word: { hardUse: 'hard use', regularRoadUse: 'regular road use', conserve: trade.conserve, showStandard: 'show standard' },
});
