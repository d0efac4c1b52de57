import type { Vocabulary } from './vocabulary';

export type Place = 'teardown' | 'parts' | 'plan' | 'stores' | 'refit';
export const PLACES: readonly Place[] = ['teardown', 'parts', 'plan', 'stores', 'refit'];

/** The five places of the app, and what lies under the job's name. */
export const places = (trade: Vocabulary) => ({
  app: 'asfound',
  nav: 'Places',
  teardown: 'Teardown', parts: 'Parts', plan: 'Plan', stores: trade.stores, refit: 'Refit',
  job: 'Job', jobs: 'Jobs', vehicles: 'Vehicles and donors', suppliers: `Suppliers and ${trade.specialist}s`, handOver: 'Hand over',
  settings: 'Settings', safeKeeping: 'Safe keeping', cautions: 'Cautions',
});
