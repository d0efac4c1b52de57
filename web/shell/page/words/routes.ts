import type { Vocabulary } from './vocabulary';
import { KEEP } from './format';

export type RouteName = 'UseAgain' | 'RepairHere' | 'SendOut' | 'Exchange' | 'Buy' | 'Kit' | 'Donor' | 'Irreplaceable';
export const ROUTES: readonly RouteName[] = ['UseAgain', 'RepairHere', 'SendOut', 'Exchange', 'Buy', 'Kit', 'Donor', 'Irreplaceable'];

/** What happens to a part, and how its bar reads. */
export const routes = (trade: Vocabulary) => ({
  name: {
    UseAgain: 'Use again', RepairHere: 'Repair here', SendOut: 'Send out', Exchange: 'Exchange',
    Buy: 'Buy', Kit: 'Kit', Donor: 'Donor', Irreplaceable: 'Irreplaceable',
  } satisfies Record<RouteName, string>,
  cash: 'cash', ownTime: 'own time', risk: 'risk', again: 'done again', eightInTen: `8${KEEP}in${KEEP}10`,
  surcharge: trade.surcharge, specialist: trade.specialist,
  bar: (cash: string, ownTime: string, risk: string) => `${cash} cash, ${ownTime} own time, ${risk} risk`,
  againLater: (sum: string) => `${sum} done again later`,
  bracket: (low: string, high: string) => `in 8 of 10 cases between ${low} and ${high}`,
  notAllowed: 'not allowed',
});
