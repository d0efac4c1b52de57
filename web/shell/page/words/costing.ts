import type { Correctness, Input, RateBasis, Route, WhyNot } from '../../bridge/protocol';
import type { Figure } from '../routes/figure-kinds';
import { count, listed } from './format';
import type { Vocabulary } from './vocabulary';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Quotes, bars and the decision. */
export const costing = (trade: Vocabulary) => ({
  title: 'Routes',
  empty: { first: 'What could happen to this part?', then: 'Enter one figure for a route: a price, or your hours. One is enough; say how sure you are.' },
  add: 'Add a quote', another: 'Another quote',
  choose: 'Choose', chosen: 'chosen', choosenBoth: (route: string, parts: number) => `${route} chosen for ${count(parts, 'part')} that belong together`, choosen: (route: string) => `${route} chosen`,
  chosenBy: (route: string, who: string, when: string) => `${route}, chosen ${who ? `by ${who} ` : ''}on ${when}`,
  chosenAt: 'at these figures', nowAt: (then: string, now: string) => `It stood at ${then} then; it is ${now} now.`,
  changed: (route: string, saves: string) => `This changed: ${route} is now ${saves} cheaper.`, changedTodo: 'Look again, and choose once more or leave it.',
  unchoose: 'Take the choice back', unchosen: 'Choice taken back',
  cashOf: (money: string) => `${money} cash`, timeOf: (time: string) => `${time} own time`,
  edit: (route: string) => `Change the quote for ${route}`, editWord: 'Change', strike: 'Strike out', struck: 'Quote struck out',
  form: {
    title: 'Quote', route: 'Route', from: 'From whom', fromHint: `${trade.specialist}, supplier, donor: as you call them`,
    donor: 'Which donor', donorNotSaid: 'not said', donorHint: 'What the donor itself costs is counted once, with the donor. Here is only what comes on top.', noDonor: 'Donors are kept under the job’s name, in vehicles and donors.',
    one: 'One figure is enough; the rest may stay empty.', notLeft: 'not left for it',
    starting: (value: string) => `left empty: ${value}, a starting value`,
    figure: {
      cash: 'Cash', cash_least: 'Cash, least', cash_most: 'Cash, most', freight: 'Freight', tax: 'Tax', duty: 'Duty', consumables: 'Abrasive, gas, grease', surcharge: capital(trade.surcharge), withheld: 'Withheld, times in 100',
      own_time: 'Own time', own_time_least: 'Own time, least', own_time_most: 'Own time, most', chance: 'Fails, times in 100', chance_least: 'Fails, least', chance_most: 'Fails, most',
      strip_again: 'Strip again when it fails', life: 'Lasts', life_least: 'Lasts, least', life_most: 'Lasts, most', wait: 'Wait', wait_least: 'Wait, least', wait_most: 'Wait, most', exchange_rate: 'Rate of exchange',
    } satisfies Record<Figure, string>,
    unit: { chance: 'in 100', years: 'years', days: 'days', rate: '' },
    wrong: {
      money: 'Give a sum, like 18 or 18.50.', hours: 'Give hours, like 2, 2.5 or 1:30.', chance: 'Give a number from 0 to 100.', years: 'Give years, like 8 or 2.5, up to 100.', days: 'Give whole days.', rate: 'Give a rate, like 0.85.',
    },
    wrongDay: 'Give a day, like 2026-05-01.', nothing: 'Give one figure: cash or hours.', crossed: 'The least is more than the most.', leastAbove: 'The least is more than the figure itself.', mostBelow: 'The most is less than the figure itself.',
    per: 'The price is for', perAll: 'all of it', perOne: { piece: 'a piece', 'square-centimetre': 'a cm²', 'square-decimetre': 'a dm²', 'square-metre': 'a m²', 'square-inch': 'a sq in', 'square-foot': 'a sq ft', kilogram: 'a kilogram', pound: 'a pound' } satisfies Record<RateBasis, string>,
    perPiece: 'Counted for the pieces of the part.', perArea: 'Counted for the surface on the part’s sheet.', perMass: 'Counted for the mass on the part’s sheet.',
    sure: { cash: 'How sure is the price?', own_time: 'How sure are the hours?', chance: 'How sure is the chance?', life: 'How sure is that?', wait: 'How sure is the wait?' },
    folds: { money: 'Freight, tax and what else is paid', lasts: 'How long it lasts, and what if it fails', offer: 'What is offered', range: 'Least and most' },
    currency: 'Priced in', rateHint: (from: string, to: string) => `What one ${from} costs in ${to}`, usualTax: (percent: string, sum: string) => `at the usual ${percent} %: ${sum}`, byTerms: (percent: string) => `left empty: ${percent} % by their terms`, surchargeHint: 'Paid at first, returned when the old unit is accepted',
    atBench: 'A failure shows', afterRefit: 'after refitting: strip again', yesAtBench: 'at the bench: nothing to strip again',
    fallback: 'If it fails', cheapestLeft: 'the cheapest that is left', correctness: 'How original', notSaid: 'not said', validUntil: 'Valid until',
    rangeHint: 'In place of sure, about or wild guess: between these two the figure lies 8 times in 10.',
    put: 'Put the quote down', done: (route: string) => `Quote for ${route} put down`,
  },
  kit: {
    title: 'In the kit', count: (n: number) => count(n, 'part'), add: 'Another part that is in it', choose: 'which part', takeOut: 'Not in it', takenOut: (name: string) => `${name} is not in the kit`, added: (name: string) => `${name} is in the kit`,
    pieces: (inside: number, needed: number) => (inside === needed ? count(inside, 'piece') : `${inside} of ${count(needed, 'piece')}`), singly: (sum: string) => `singly ${sum}`, noSingle: 'no single price', spare: 'decided otherwise', unknown: 'a part that is not listed',
    pays: (kit: string, singly: string) => `With the kit ${kit}, singly ${singly}: the kit pays.`, paysNot: (kit: string, singly: string) => `With the kit ${kit}, singly ${singly}: the kit does not pay.`,
    noSingles: 'Enter what its parts cost singly, to weigh the kit against them.', chooseAll: (n: number, price: string) => `Choose it for all ${n}, ${price} once`, chooseRest: (n: number) => `Choose it for ${count(n, 'part')} more`, chosenAll: (n: number) => `Kit chosen for ${count(n, 'part')}`,
    list: {
      open: 'Paste what is in it', title: 'What is in the kit', lead: 'Paste the list of the kit: a line for each thing, with its number, its name and how many. Nothing is put down before you have looked.', field: 'The list', example: '2  Hub seal  GHS 123', read: 'Look for the parts',
      found: (sure: number, lines: number) => `${sure} of ${count(lines, 'line')} found`, none: 'No line could be read.', failed: 'It could not be looked up. Try once more.', number: 'by its number', name: 'by its name', likely: 'likely, look again', not: 'not one of the parts here', already: 'in the kit already', which: (line: string) => `Part for ${line}`, choose: 'none of the parts',
      put: (n: number) => `Put ${count(n, 'part')} into the kit`, done: (n: number) => `${count(n, 'part')} put into the kit`,
    },
  },
  startingSaid: (figure: string) => `starting value ${figure}`,
  flips: {
    holds: (phrase: string) => `Cheapest as long as ${phrase}`,
    comesFirst: (route: string, phrase: string) => `${route} comes first if ${phrase}`,
    under: (value: string) => `under ${value}`, over: (value: string) => `over ${value}`,
    it: 'it', said: '; you said ', unsaid: '; you did not say, so ', more: (n: string) => `What else would change it (${n})`,
    times: (n: string) => `${n} times in 100`, percent: (n: string) => `${n} %`, years: (n: string) => `${n} years`,
    open: (cheapest: string, rivals: readonly string[]) => `The order is open: these figures are so unsure that ${listed(rivals)} may be cheaper than ${cheapest} after all.`,
    phrase: {
      cash: (doing: string) => `${doing} costs`, freight: (doing: string) => `freight for ${doing} is`, tax: (doing: string) => `tax on ${doing} is`, duty: (doing: string) => `duty on ${doing} is`,
      consumables: (doing: string) => `${doing} uses up`, surcharge: (doing: string) => `the ${trade.surcharge.toLowerCase()} for ${doing} is`, withheld: (doing: string) => `the ${trade.surcharge.toLowerCase()} for ${doing} is withheld`,
      own_time: (doing: string) => `${doing} takes`, strip_again: (doing: string) => `stripping again after ${doing} takes`, chance: (doing: string) => `${doing} fails`, life: (doing: string) => `${doing} lasts`,
      hour_value: () => 'an hour of yours counts', interest: () => 'interest a year is', years: () => 'the vehicle is kept',
    } satisfies Record<Input, (doing: string) => string>,
  },
  sentence: {
    doing: {
      'use-again': 'using it again', 'repair-here': 'repairing', 'send-out': 'sending it out', exchange: 'exchanging', buy: 'buying', kit: 'the kit', donor: 'the donor’s part', irreplaceable: 'saving it',
    } satisfies Record<Route, string>,
    alone: (route: string) => `${route} is the only route with a figure. Enter another to weigh it against.`,
    noHour: 'An hour of yours counts nothing here.', setHour: 'Say what it counts',
  },
  lines: {
    cash: 'cash', freight: 'freight', tax: 'tax', duty: 'duty', consumables: 'consumables', surcharge: (times: string) => `${trade.surcharge.toLowerCase()}, withheld ${times} times in 100`,
    shared: 'the other parts in the kit save', 'own-time': 'own time', risk: 'risk', expected: 'expected cost', present: (years: string) => `worth now over ${years}`, yearly: 'each year',
    renewals: (times: string, life: string) => `done again ${times}, lasting ${life}`, atRate: (rate: string) => `at ${rate} to one`,
    at: (value: string) => `at ${value}`, byTerms: (what: string, percent: string) => `${what}, ${percent} % by the supplier’s terms`,
    amount: {
      piece: (n) => (n === '1' ? '1 piece' : `${n} pieces`), 'square-centimetre': (n) => `${n} cm²`, 'square-decimetre': (n) => `${n} dm²`, 'square-metre': (n) => `${n} m²`, 'square-inch': (n) => `${n} sq in`, 'square-foot': (n) => `${n} sq ft`, kilogram: (n) => `${n} kg`, pound: (n) => `${n} lb`,
    } satisfies Record<RateBasis, (n: string) => string>, of: (sum: string) => `in 100 of ${sum}`, inCase: (sum: string) => `(${sum})`,
    instead: (route: string) => `if it fails: ${route} instead`, stripAgain: (time: string, value: string) => `if it fails: strip again, ${time} at ${value}`,
    heading: (route: string, what: string, sum: string) => `${route}, ${what}: ${sum}`,
    noOther: 'No other route has a figure: what comes after a failure is not counted.',
  },
  who: { title: 'Who decides?', lead: 'A decision is kept with a name. It is asked once on this device.', label: 'Name', go: 'Choose', without: 'Choose without a name' },
  reasons: {
    'cannot-be-bought': 'marked: cannot be bought', 'single-use': 'single use: a new one goes in', 'other-currency': 'priced in another currency', 'nothing-there': 'missing from the start: nothing to work on',
    'below-aim': 'less original than the aim of this job', safety: 'safety-critical: not repaired at home; renew it, or have it tested', 'run-out': 'no longer valid: ask again',
    'not-in-trade': 'the trade does not do this with such a part', 'judged-scrap': 'judged to be scrap', 'needs-rework': 'judged to need work first', 'waits-for-proof': 'waits for proof: not proved counts as bad', 'amount-missing': 'priced by mass or area: say on the part’s sheet how heavy or large it is',
  } satisfies Record<WhyNot, string>,
  correctness: {
    original: 'original part', 'new-old-stock': 'original, never used', 'faithful-reproduction': 'faithful reproduction', pattern: 'pattern part', uprated: 'later or stronger', 'home-made': 'home made',
  } satisfies Record<Correctness, string>,
});
