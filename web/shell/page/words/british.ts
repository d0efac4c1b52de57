import type { Vocabulary } from './vocabulary';

export const british: Vocabulary = {
  stores: 'Stores',
  surcharge: 'surcharge',
  specialist: 'specialist',
  docket: 'works docket',
  dockets: 'works dockets',
  conserve: 'conserve',
  outForWork: 'out for work',
  splitPin: 'split pin',
  circlip: 'circlip',
  damper: 'damper',
  stubAxle: 'stub axle',
  spanner: 'spanner',
  earth: 'earth',
  colour: 'colour',
  tyre: 'tyre',
};
