import type { Standing, TagMarks } from '../kit/standing';
import type { Vocabulary } from './vocabulary';

/** The word that always stands beside the tag. */
export const standings = (trade: Vocabulary) => ({
  on: 'on', off: 'off', judged: 'judged', decided: 'decided', out: trade.outForWork, order: 'on order',
  tried: 'tried', ready: 'ready', refitted: 'refitted',
}) satisfies Record<Standing, string>;

export const marks: Record<keyof TagMarks, string> = {
  inHand: 'in hand', irreplaceable: 'irreplaceable', missing: 'missing', foreign: 'foreign', struck: 'struck out',
};
