import { count } from './format';

/** What can be said of refitting today: the order of removal, reversed. */
export const refit = {
  title: 'Refit',
  today: 'Refit starts with what came off last. This is the order of removal turned round, to read; ticks, tightening figures and what blocks what come with a later version.',
  order: 'Last off, first on', none: { first: 'Nothing is off yet.', then: 'What you take off in Teardown stands here in reverse.', go: 'Go to Teardown' }, count: (n: number) => count(n, 'part'), pick: 'Assembly', choose: { first: 'Choose an assembly.', then: 'Its parts stand here, last off first.' },
  noAssembly: { first: 'No assembly yet.', then: 'The order is kept for each assembly: make one in Teardown.', go: 'Go to Teardown' },
  step: (n: number) => `${n}`,
};
