import { aims } from './aims';
import { confidence } from './confidence';
import { kit } from './kit';
import { moments } from './moments';
import { places } from './places';
import { routes } from './routes';
import { sides } from './sides';
import { trade } from './speech';
import { marks, standings } from './standings';
import type { Vocabulary } from './vocabulary';

// One line for each place; the sentences themselves live in the file of that name.
const all = (vocabulary: Vocabulary) => ({
  trade: vocabulary,
  aims: aims(vocabulary),
  confidence,
  kit: kit(vocabulary),
  marks,
  moments,
  places: places(vocabulary),
  routes: routes(vocabulary),
  sides,
  standings: standings(vocabulary),
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
