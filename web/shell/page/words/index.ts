import { confidence } from './confidence';
import { kit } from './kit';
import { moments } from './moments';
import { places } from './places';
import { routes } from './routes';
import { sides } from './sides';
import { first } from './first';
import { frame } from './frame';
import { speak } from './speak';
import { teardown } from './teardown';
import { assemblies } from './assemblies';
import { before } from './before';
import { joints } from './joints';
import { tagsSheet } from './tags-sheet';
import { cautions } from './cautions';
import { checks, ownOutcomes } from './checks';
import { costing } from './costing';
import { families } from './families';
import { features } from './features';
import { judge } from './judge';
import { certainty } from './certainty';
import { decide } from './decide';
import { measures } from './measures';
import { gearing } from './gearing';
import { handOver } from './hand-over';
import { history } from './history';
import { parts } from './parts';
import { photo } from './photo';
import { bought } from './bought';
import { paste } from './paste';
import { plan } from './plan';
import { problems } from './problems';
import { commissioning } from './commissioning';
import { refit } from './refit';
import { supply } from './supply';
import { safeKeeping } from './safe-keeping';
import { selfTest } from './self-test';
import { settings } from './settings';
import { sheet } from './sheet';
import { rules } from './rules';
import { scan } from './scan';
import { stores } from './stores';
import { stance, suppliers } from './suppliers';
import { tightening } from './tightening';
import { vehicles } from './vehicles';
import { where } from './where';
import { trade } from './speech';
import { marks, standings } from './standings';
import type { Vocabulary } from './vocabulary';

// One line for each place; the sentences themselves live in the file of that name.
const all = (vocabulary: Vocabulary) => ({
  trade: vocabulary,
  confidence,
  kit: kit(vocabulary),
  marks,
  moments,
  places: places(vocabulary),
  routes: routes(vocabulary),
  sides,
  standings: standings(vocabulary),
  first,
  frame,
  speak,
  teardown: teardown(vocabulary),
  assemblies,
  before,
  joints: joints(vocabulary),
  tagsSheet,
  cautions: cautions(vocabulary),
  checks,
  ownOutcomes,
  costing: costing(vocabulary),
  families: families(vocabulary),
  features,
  certainty, decide, judge, measures,
  handOver: handOver(vocabulary),
  history,
  parts: parts(vocabulary),
  photo,
  bought,
  paste,
  plan,
  problems: problems(vocabulary),
  refit: refit(vocabulary),
  tightening, supply, scan,
  commissioning: commissioning(vocabulary),
  safeKeeping,
  selfTest,
  settings: settings(vocabulary),
  sheet: sheet(vocabulary),
  stores: stores(vocabulary),
  where: where(vocabulary),
  vehicles,
  suppliers: suppliers(vocabulary), stance, rules, gearing: gearing(vocabulary),
});

export type Words = ReturnType<typeof all>;

let made: Words | undefined;

/** Every sentence of the app, in the vocabulary now set. Ask each time; never keep the answer. */
export function words(): Words {
  const now = trade();
  if (made?.trade !== now) made = all(now);
  return made;
}

export { locale, setSpeech, speech } from './speech';
export type { Speech, Vocabulary } from './vocabulary';
