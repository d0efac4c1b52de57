import type { Relation } from '../../bridge/protocol';

/** What goes, or does not go, with what. */
export const rules = {
  title: 'Fit rules', add: 'Add a fit rule', put: 'Put the rule down', done: 'Fit rule put down',
  none: { first: 'Everything goes with everything.', then: 'Say here what does not: later drums need later hubs, one bracket rules out the other.' },
  subject: 'This', relation: 'How it goes', other: 'With this', choose: 'choose', noName: 'no name yet', donor: (name: string) => `Donor: ${name}`,
  relations: { needs: 'needs', 'rules-out': 'rules out', 'goes-with': 'goes with' } satisfies Record<Relation, string>,
  which: 'Which of it', anyNew: 'any other piece than its own', price: 'Costs extra without it', priceHint: 'What it costs to make one fit without the other.',
  without: (sum: string) => `without it ${sum} more`, gone: 'something not in this job',
  counts: 'A part counts where another piece comes in for it: exchanged, bought, from a kit or a donor. What stays is not asked.',
  wrong: { missing: 'Choose a part or a donor.', itself: 'That is the same thing: choose another.', money: 'Give a sum, like 18 or 18.50.' },
  strike: 'Strike out', struck: 'Fit rule struck out',
};
