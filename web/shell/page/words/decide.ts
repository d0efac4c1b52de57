import type { Waits } from '../../bridge/protocol';
import { KEEP } from './format';

/** The undecided, one after another. */
export const decide = {
  title: 'Decide', of: (n: number, all: number) => `Decide, ${n}${KEEP}of${KEEP}${all} open`, first: 'most at stake first', stake: (sum: string) => `a wrong choice here costs up to ${sum}`, noStake: 'little is at stake here',
  ranking: 'Working out what is most at stake …', slow: 'It could not be worked out. What is open stands in order of tag.', later: 'Later', before: 'Before', next: 'Next',
  choose: (route: string) => `Choose ${route}`, chooseAll: (route: string, parts: number) => `Choose ${route} for ${parts}`, worth: (sum: string) => `worth up to ${sum}`,
  finding: 'Judge it', goOn: 'Go on judging', look: 'Look again', addQuote: 'Add a quote', photos: 'Photos', working: 'Working', noRoute: 'Pick a route that is left.', cash: (sum: string, parts: number) => `${sum}${KEEP}cash${parts > 1 ? ` for${KEEP}one` : ''}`, done: (tag: string, what: string) => `${tag}: ${what}`,
  waits: { quote: 'it has no quote yet', 'allowed-quote': 'none of its quotes may be chosen', 'first-word': 'nobody has said a first word of it yet', 'coming-off': 'it is still on the vehicle' } satisfies Record<Waits, string>,
  allDone: { first: 'Nothing is open.', then: 'Every part is decided.', go: 'To the plan' }, gone: { first: 'This part is not open any more.', then: 'It was decided, struck out, or is not in this job.', go: 'The next one' },
  keys: 'All keys', keyList: { '1–9': 'pick a route', Enter: 'choose it', L: 'later', '←': 'the one before', '→': 'the next', F: 'judge it', M: 'measure', A: 'add a quote', W: 'working', P: 'photos', Z: 'undo', '?': 'all keys' },
  link: (n: number) => (n === 1 ? 'Decide the open one' : `Decide the ${n} open ones`), undone: 'Taken back',
};
