import type { BreachWhy, Relation } from '../../bridge/protocol';

/** What goes, or does not go, with what. */
export const rules = {
  title: 'Fit rules', edit: 'Change', editTitle: 'Change the fit rule', changed: 'Fit rule changed', add: 'Add a fit rule', put: 'Put the rule down', done: 'Fit rule put down',
  none: { first: 'Everything goes with everything.', then: 'Say here what does not: later drums need later hubs, one bracket rules out the other.' },
  subject: 'This', relation: 'How it goes', other: 'With this', choose: 'choose', noName: 'no name yet', donor: (name: string) => `Donor: ${name}`,
  relations: { needs: 'needs', 'rules-out': 'rules out', 'goes-with': 'goes with' } satisfies Record<Relation, string>,
  which: 'Which of it', anyNew: 'any other piece than its own', price: 'Costs extra without it', priceHint: 'What it costs to make one fit without the other.',
  without: (sum: string) => `without it ${sum} more`, gone: 'something not in this job',
  counts: 'A part counts where another piece comes in for it: exchanged, bought, from a kit or a donor. What stays is not asked.',
  wrong: { missing: 'Choose a part or a donor.', itself: 'That is the same thing: choose another.', money: 'Give a sum, like 18 or 18.50.' },
  strike: 'Strike out', struck: 'Fit rule struck out',
  breaches: {
    title: 'Does not fit together',
    why: {
      'nothing-chosen': (other) => `Nothing is chosen for ${other} yet.`, 'other-chosen': (other, route) => (route ? `For ${other} something else is chosen: ${route}.` : `For ${other} something else is chosen.`),
      'not-used': (other) => `Nothing is chosen from ${other}.`, both: () => 'Both are chosen.',
    } satisfies Record<BreachWhy, (other: string, route: string) => string>,
    extra: (sum: string) => `It costs ${sum} extra as it is.`,
    choose: (what: string, part: string) => `${what} for ${part}`, more: (sum: string) => `${sum} more`, less: (sum: string) => `${sum} less`, same: 'for the same money',
    mend: (what: string, amount: string) => `Cheapest mend: ${what}, ${amount}.`, dearer: (what: string, amount: string) => `To leave it so is cheapest. Otherwise: ${what}, ${amount}.`,
    none: 'Nothing that is quoted mends it: enter another quote.', take: 'Mend it', taken: (what: string) => `Chosen: ${what}`,
  },
};
