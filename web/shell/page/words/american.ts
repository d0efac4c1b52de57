import type { Vocabulary } from './vocabulary';

/** Only what differs. */
export const american: Partial<Vocabulary> = {
  stores: 'Storage',
  surcharge: 'core charge',
  specialist: 'outside shop',
  docket: 'shop ticket',
  dockets: 'shop tickets',
  conserve: 'preservation',
  outForWork: 'sent out',
  splitPin: 'cotter pin',
  circlip: 'snap ring',
  damper: 'shock',
  stubAxle: 'spindle',
  spanner: 'wrench',
  earth: 'ground',
  colour: 'color',
  tyre: 'tire',
};
