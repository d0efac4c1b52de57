import type { Because, Collision, Scarce, StepWhy } from '../../bridge/protocol';
import { count, listed } from './format';

interface Held { amount: string; names: readonly string[]; stage: number }

/** What can be said of the plan today: sums over chosen quotes. */
export const plan = {
  title: 'Plan',
  today: 'Order windows, dockets and the calendar come with a later version.',
  money: 'Money', cashDecided: 'cash decided', peak: (surcharge: string) => `paid at first, ${surcharge} in full`, worth: 'worth now, all counted',
  openAt: (open: number, quoted: number) => (quoted === open ? `open, at the cheapest: ${open}` : `open, at the cheapest: ${quoted} of ${open}`),
  unpriced: (n: number) => (n === 1 ? 'One part is renewed whatever it looks like, and has no price yet.' : `${n} parts are renewed whatever they look like, and have no price yet.`),
  guessed: (n: string) => `${n} of 100 of this rests on guesses.`, spent: (n: number) => (n > 0 ? `bought, ${count(n, 'purchase')}` : 'bought'), bought: 'I bought something', changed: 'This changed',
  sums: 'As it was chosen', cash: 'prices alone', asChosen: 'Prices alone, as they stood on the day of each choice. Freight, tax and what has changed since count above.', ownTime: 'own time', decided: (n: number, all: number) => `${count(n, 'part')} of ${all}`, byRoute: 'By route', open: 'No route chosen', openCount: (n: number) => count(n, 'part'),
  none: { first: 'Nothing is chosen yet.', then: 'Enter quotes on the sheet of a part and choose one: its cash and hours are summed here.', go: 'To the parts' },
  hourValue: (hours: string, value: string, sum: string) => `${hours} at ${value} count ${sum}.`,
  whole: {
    title: 'The whole job at once', parts: (n: number) => count(n, 'part'), working: 'Working it out …', improving: 'Still improving.', failed: 'It could not be worked out. Open Plan again.',
    worth: 'worth now, all counted', cash: 'paid at first', carriage: 'of that carriage and least charges', ownTime: 'own time', wait: 'longest wait',
    decided: 'What is decided', stays: 'stays', mayChange: 'may change', stop: 'Stop here', roughly: 'Roughly: not proved to be the best.', ofCash: 'cash', ofTime: 'own time', ofWait: 'of waiting', otherwise: (n: number) => `${count(n, 'part')} not at ${n === 1 ? 'its' : 'their'} own cheapest, and why`, routes: 'Routes in it',
    savesOwn: (sum: string) => `${sum} less than your own choices.`, sameOwn: 'Your own choices are the best together, too.', ownNot: 'Your own choices together break a limit or a rule.',
    saves: (sum: string) => `${sum} less than each part’s own cheapest.`, same: 'Each part’s own cheapest is the best together, too.', singlyNot: 'Each part’s own cheapest together would break a limit or a rule.',
    best: 'Proved: nothing is cheaper.', within: (percent: string) => `Within ${percent} % of the best possible.`, unplanned: (n: number) => `${count(n, 'part')} without a quote that may be chosen: not in it.`,
    nothingFits: 'Nothing keeps all limits and rules. These collide; each shows what giving way takes:', noneYet: 'No plan found yet that keeps all limits and rules.',
    changes: 'Changes that bring most', rest: (n: number) => `All ${n} that are left`, andMore: (n: number) => `and ${n} more`, take: 'Take it', takeAll: (n: number) => (n === 1 ? 'Take the one that is open' : `Take all ${n} that are open`), takeSteps: (n: number) => (n === 1 ? 'Change the one' : `Change all ${n}`),
    step: { itself: () => '', kit: (name: string) => `one kit pays for all of them${name ? `: ${name}` : ''}`, donor: (name: string) => `from the donor, paid for once: ${name}`, order: (name: string) => `one order, one carriage: ${name}`, 'no-kit': (name: string) => `no kit is needed${name ? ` from ${name}` : ''}`, 'no-donor': (name: string) => `the donor is not needed: ${name}`, 'no-order': (name: string) => `saves an order or some of its carriage: ${name}`, rest: () => '' } satisfies Record<StepWhy, (name: string) => string>,
    taken: (n: number) => `${count(n, 'part')} decided as planned`,
    because: {
      shared: (more: string) => `already paid for by others; by itself it would cost ${more} more`, carriage: (more: string) => `its own cheapest would cost ${more} more, by carriage or a least charge`, budget: (more: string) => `its own cheapest passes the budget by ${more}`, hours: (more: string) => `its own cheapest passes your hours by ${more}`,
      'least-order': (more: string) => `without it an order is ${more} short of the least`, rule: () => 'its own cheapest breaks a fit rule', together: () => 'decided together with its other side or set', dearer: (more: string) => `together ${more} cheaper`,
    } satisfies Record<Because, (more: string) => string>,
    collide: {
      budget: ({ amount }: Held) => (amount ? `The budget: ${amount} more would do.` : 'The budget: more of it alone does not help.'), stage: ({ amount, stage }: Held) => `The budget of stage ${stage}: ${amount ? `${amount} more would do.` : 'more of it alone does not help.'}`,
      hours: ({ amount }: Held) => (amount ? `Your own hours: ${amount} more would do.` : 'Your own hours: more of them alone do not help.'), 'least-order': ({ names }: Held) => `The least order of ${listed(names)}.`, rule: ({ names }: Held) => `The fit rule about ${listed(names)}.`,
    } satisfies Record<Collision, (held: Held) => string>,
    orders: 'Orders and batches', carriageOf: (sum: string) => `carriage ${sum}`, free: 'carriage free', short: (sum: string) => `${sum} short of the least charge`, toFree: (sum: string) => `${sum} more and carriage is free`,
    shared: 'Kits and donors', kit: (n: number) => (n === 1 ? 'A kit' : `${n} kits`), spare: (n: number) => `${count(n, 'piece')} left over`, noSpare: 'nothing left over', here: 'here already', gives: (n: number) => `gives ${count(n, 'part')}`,
    whatIf: 'What if', whatIfLead: 'Tried out here alone; nothing is kept.', turned: 'tried out', budget: 'Budget', hours: 'Own hours', hourValue: 'Value of an hour', noLimit: 'no limit', stageBudget: (stage: number) => `Budget of stage ${stage}`, sellers: 'Suppliers, specialists and donors in it', asSet: 'As it is set',
  },
  frontier: {
    title: 'Cost against hours and budget', lead: 'What the whole job would cost with fewer or more hours, or with less or more cash.', open: 'Draw it', working: 'Solving it again and again …', failed: 'It could not be worked out. Try again.', nothing: 'Nothing keeps all limits and rules: there is no line to draw.',
    against: 'Drawn against', of: { hours: 'Own hours', cash: 'Budget' } satisfies Record<Scarce, string>, limit: { hours: 'your hours', cash: 'your budget' } satisfies Record<Scarce, string>,
    plan: 'today’s plan', own: 'your own choices', below: 'not to be had', more: (amount: string) => `${amount} more saves`, saves: (sum: string) => sum, about: ', as far as it was looked.', noMore: (amount: string) => `${amount} more saves nothing.`,
    noLimit: { hours: 'You set no limit to your hours. Settings has one.', cash: 'You set no budget. Settings has one.' } satisfies Record<Scarce, string>, least: (amount: string) => `With less than ${amount} nothing fits.`,
    table: 'The same as a table', cost: 'Worth now, all counted', sure: 'How sure', proved: 'proved', notBelow: (sum: string) => `not below ${sum}`,
    says: ({ of, points, plan, own }: { of: string; points: readonly { amount: string; cost: string }[]; plan: string; own: string }) => `Cost against ${of.toLowerCase()}: ${listed(points.map(({ amount, cost }) => `${amount}: ${cost}`))}.${plan ? ` Today’s plan: ${plan}.` : ''}${own ? ` Your own choices: ${own}.` : ''}`,
  },
  sway: {
    title: 'If the guesses are off', lead: 'Prices and hours are drawn within their guesses, and the whole job is planned anew each time.', open: 'Try it', working: 'Planning over and over …', failed: 'It could not be worked out. Try again.', drawn: (n: number) => `${n} draws`,
    steady: (n: number, all: number) => `${n} of ${count(all, 'part')} go the same way every time. These do not:`, allSteady: (n: number) => (n === 1 ? 'The one part goes the same way every time.' : `All ${count(n, 'part')} go the same way every time.`), unfit: (n: number, all: number) => `In ${n} of ${all} draws nothing fitted.`,
    times: (way: string, n: number, all: number) => `${way}: ${n} of ${all}`, else: (ways: readonly string[]) => `else ${ways.join('; ')}`,
  },
  aims: {
    title: 'Two aims side by side', lead: (aim: string) => `The plan above is for ${aim}.`, other: 'Beside it', nothing: (aim: string) => `For ${aim} nothing keeps all limits and rules.`, differ: (n: number) => `${count(n, 'part')} ${n === 1 ? 'goes' : 'go'} another way`, same: 'Every part goes the same way.', turns: (one: string, other: string) => `${one} → ${other}`, none: 'no quote',
  },
  kept: {
    title: 'Plans you kept', as: 'Keep this plan as', hint: 'A name, to set it beside others later.', keep: 'Keep it', nameless: 'Give it a name.', twice: 'Another plan has this name.', done: 'Plan kept', working: 'Counting what you kept …', failed: 'What you kept could not be counted. Open Plan again.',
    table: 'What each comes to now', worth: 'worth now', cash: 'paid at first', ownTime: 'own time', limits: 'limits and rules', fits: 'kept', broken: 'broken', was: (then: string) => `${then} when kept`,
    same: 'Nothing has changed since.', dearer: (names: string, sum: string) => `Now ${sum} more: ${names}.`, cheaper: (names: string, sum: string) => `Now ${sum} less: ${names}.`, even: (names: string) => `Other prices, the same in all: ${names}.`,
    gone: (names: string) => `The quote is gone: ${names}.`, barred: (names: string) => `The quote may no longer be chosen: ${names}.`, partGone: (names: string) => `No longer in the job: ${names}.`, later: (names: string) => `Came later: ${names}.`, cheapest: 'Counted at the cheapest there is.',
    hour: (then: string, now: string) => `An hour counted ${then} in it, and counts ${now} now.`, others: (n: number) => `${n} more`, unknown: 'a part that is not here', adopt: 'Adopt it', changes: (n: number) => `${count(n, 'part')} ${n === 1 ? 'changes' : 'change'} with it.`, adopted: (n: number) => `${count(n, 'part')} decided as kept`, isChosen: 'All that can be chosen of it is chosen.', strike: 'Strike out', struck: 'Plan struck out', on: (day: string) => `Kept on ${day}.`,
  },
  noParts: { first: 'Nothing is off yet.', then: 'Take the first photo in Teardown.', go: 'Go to Teardown' },
};
