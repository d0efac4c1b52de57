import type { Input } from '../../bridge/protocol';

/** How sure one may be of what the routes come to, and what finding out is worth. */
export const certainty = {
  title: 'How sure is that?', lead: 'The figures that you are not sure of are drawn at random over and over, within what you said of them.', open: 'Work it out', working: 'Working it out …', failed: 'It could not be worked out. Try again.', again: 'Again',
  often: 'How often each is the cheapest', range: (low: string, high: string) => `${low} to ${high}, 8 times in 10`, sure: 'No figure is unsure: nothing is left to chance.',
  wrong: (route: string, sum: string) => `Choosing ${route} now may turn out wrong: that costs ${sum} in the mean.`, right: (route: string) => `By these figures ${route} is as good as certainly the cheapest.`,
  waitOf: (days: string) => `${days} to wait`, waits: (least: string, most: string) => `${least} to ${most} to wait`,
  inputs: { cash: 'the price', freight: 'the freight', tax: 'the tax', duty: 'the duty', consumables: 'what the work uses up', surcharge: 'the surcharge', withheld: 'whether it is withheld', own_time: 'the own hours', chance: 'the chance that it fails', strip_again: 'the hours to strip again', life: 'how long it lasts', hour_value: 'the value of an hour', interest: 'the interest', years: 'the years kept' } satisfies Record<Input, string>,
  knowing: 'Worth finding out', knowingOne: (what: string, route: string) => (route ? `${what}, ${route}` : what), upTo: (sum: string) => `up to ${sum}`, nothing: 'Knowing one figure alone would not change the choice.',
  test: { title: 'Would a test pay?', lead: 'A crack test, a trial fit, a quote for the hours: something that tells beforehand whether a route fails.', quote: 'Whether this fails', price: 'The test costs', time: 'Own hours for it',
    finds: 'Of 100 that will fail it finds', spares: 'Of 100 sound ones it passes', go: 'Work it out', wrong: 'A number from 0 to 100.',
    said: (worth: string, costs: string, pays: boolean) => `Worth up to ${worth}, costs ${costs}: ${pays ? 'do it.' : 'leave it.'}`,
    then: (fails: string, not: string, says: string) => (fails === not ? `Whatever it says, the choice stays ${not}.` : `If it finds a fault, in ${says}: ${fails}. If not: ${not}.`) },
};
