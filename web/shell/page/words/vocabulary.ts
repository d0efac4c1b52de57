/** The trade words that differ between British and American workshops. */
export interface Vocabulary {
  stores: string;
  surcharge: string;
  specialist: string;
  carriage: string;
  docket: string;
  dockets: string;
  conserve: string;
  outForWork: string;
  outWith: string;
  splitPin: string;
  circlip: string;
  damper: string;
  stubAxle: string;
  spanner: string;
  earth: string;
  colour: string;
  tyre: string;
  brakeDisc: string;
  trackRodEnd: string;
  halfShaft: string;
  propellerShaft: string;
  carburettor: string;
  dynamo: string;
  petrol: string;
  whiteSpirit: string;
  windscreen: string;
  loom: string;
  vice: string;
}

export type Speech = 'british' | 'american';
