import { count } from './format';

/** What can be said of the plan today: sums over chosen quotes. */
export const plan = {
  title: 'Plan',
  today: 'Here stand the sums of what is chosen. Order windows, dockets and the calendar come with a later version.',
  money: 'Money', cashDecided: 'cash decided', peak: (surcharge: string) => `paid at first, ${surcharge} in full`, worth: 'worth now, all counted',
  openAt: (open: number, quoted: number) => (quoted === open ? `open, at the cheapest: ${open}` : `open, at the cheapest: ${quoted} of ${open}`),
  unpriced: (n: number) => (n === 1 ? 'One part is renewed whatever it looks like, and has no price yet.' : `${n} parts are renewed whatever they look like, and have no price yet.`),
  guessed: (n: string) => `${n} of 100 of this rests on guesses.`, spent: (n: number) => (n > 0 ? `bought, ${count(n, 'purchase')}` : 'bought'), bought: 'I bought something', changed: 'This changed',
  sums: 'As it was chosen', cash: 'prices alone', asChosen: 'Prices alone, as they stood on the day of each choice. Freight, tax and what has changed since count above.', ownTime: 'own time', decided: (n: number, all: number) => `${count(n, 'part')} of ${all}`, byRoute: 'By route', open: 'No route chosen', openCount: (n: number) => count(n, 'part'),
  none: { first: 'Nothing is chosen yet.', then: 'Enter quotes on the sheet of a part and choose one: its cash and hours are summed here.', go: 'To the parts' },
  hourValue: (hours: string, value: string, sum: string) => `${hours} at ${value} count ${sum}.`,
  noParts: { first: 'Nothing is off yet.', then: 'Take the first photo in Teardown.', go: 'Go to Teardown' },
};
