import { count, KEEP } from './format';
import type { Vocabulary } from './vocabulary';

/** Quotes, bars and the decision. */
export const costing = (trade: Vocabulary) => ({
  title: 'Routes',
  cap: (text: string) => text.charAt(0).toUpperCase() + text.slice(1),
  empty: { first: 'What could happen to this part?', then: 'Enter one figure for a route: a price, or your hours. One is enough; say how sure you are.' },
  add: 'Add a quote', another: 'Another quote',
  choose: 'Choose', chosen: 'chosen', choosen: (route: string) => `${route} chosen`,
  chosenBy: (route: string, who: string, when: string) => `${route}, chosen ${who ? `by ${who} ` : ''}on ${when}`,
  chosenAt: 'at these figures', nowAt: (then: string, now: string) => `It stood at ${then} then; it is ${now} now.`,
  chooseOther: 'Choose another', unchoose: 'Take the choice back', unchosen: 'Choice taken back',
  cashOf: (money: string) => `${money} cash`, timeOf: (time: string) => `${time} own time`,
  nothingYet: 'no figure yet',
  edit: (route: string) => `Change the quote for ${route}`, editWord: 'Change', strike: 'Strike out', struck: 'Quote struck out',
  workings: 'Working', open: 'how it came about',
  form: {
    title: 'Quote', route: 'Route', from: 'From whom', fromHint: `${trade.specialist}, supplier, donor: as you call them`,
    cash: 'Cash', ownTime: 'Own time', chance: 'Fails, times in 100', strip: 'Strip again when it fails', one: 'One figure is enough; the rest may stay empty.',
    wrongMoney: 'Give a sum, like 18 or 18.50.', wrongHours: `Give hours, like 2, 2.5 or 1:30.`, wrongChance: 'Give a number from 0 to 100.', nothing: 'Give one figure: cash or hours.',
    sure: { cash: 'How sure is the price?', own_time: 'How sure are the hours?', chance: 'How sure is the chance?' },
    put: 'Put the quote down', done: (route: string) => `Quote for ${route} put down`, more: 'It may fail',
  },
  sentence: {
    takes: { lead: 'Cheapest as long as repairing takes ', under: (time: string) => `under ${time}`, said: '; you said ' },
    takesOther: (route: string) => `${route} would be cheapest as long as it takes `,
    over: (time: string) => `Repairing would have to take under ${time} to be cheapest`,
    never: (repair: string, buy: string) => `${repair} costs more than ${buy} even with no time spent.`,
    alone: (route: string) => `${route} is the only route with a figure. Enter another to weigh it against.`,
    noHour: 'An hour of yours counts nothing: set its value in Settings, or leave it so.',
    guesses: 'Rests on guesses.',
    said: (time: string, how: string) => (how === 'sure' ? time : `${how} ${time}`),
  },
  lines: {
    cash: 'cash', 'own-time': 'own time', risk: 'risk', expected: 'expected cost',
    hoursAt: (time: string, value: string) => `${time} at ${value}`,
    instead: (route: string) => `${route} instead`, stripAgain: (time: string, value: string) => `strip again, ${time} at ${value}`,
    chanceOf: (times: string, money: string) => `${times} in 100 of ${money}`,
    heading: (route: string, what: string, money: string) => `${route}, ${what}: ${money}`,
    noOther: 'No other route has a figure: what a failure leads to is not counted.',
  },
  who: { title: 'Who decides?', lead: 'A decision is kept with a name. It is asked once on this device.', label: 'Name', go: 'Choose', without: 'Choose without a name' },
  reasons: {
    'no-figure': 'no figure yet', 'other-currency': 'priced in another currency', 'cannot-be-bought': 'marked: cannot be bought', struck: 'struck out', 'missing-from-start': 'missing from the start',
  } as Record<string, string>,
  notAllowed: 'not allowed',
  hourValue: (value: string) => `an hour of yours counts ${value}`,
  quotes: (n: number) => count(n, 'quote'),
  keep: KEEP,
});
