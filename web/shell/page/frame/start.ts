import { desk } from '../../bridge/desk';
import * as journal from '../journal';
import { addressOf, places } from '../places';
import { setSpeech } from '../words';

const FIRST = '#/first';

/** Goes to an address; with `replace` the way back does not lead here. */
export function go(hash: string, replace = false): void {
  if (!replace) { location.hash = hash; return; }
  location.replace(hash);
}

/** Opens the job that was open last and says where to go: to the same place, else to the first screen. */
export async function startAt(hash: string): Promise<string> {
  await journal.recover();
  const last = journal.where();
  const wanted = hash && hash !== '#/' ? hash : last.hash || FIRST;
  const opened = last.job !== null && await openJob(last.job);
  const entry = places[addressOf(wanted).place];
  return opened || entry?.withoutJob ? wanted : FIRST;
}

/** Opens a job; the words follow its vocabulary. False when it is not here or cannot be read. */
export async function openJob(job: string): Promise<boolean> {
  try {
    const jobs = await desk.jobs();
    if (!jobs.some(({ id }) => id === job)) return false;
    const { ok } = await desk.open(job);
    if (!ok) return false;
  } catch {
    return false;
  }
  journal.at({ job });
  await followVocabulary();
  return true;
}

/** The words of the job that is open. */
export async function followVocabulary(): Promise<void> {
  try {
    const view = await desk.ask({ ask: 'head' });
    if (view.view === 'head') setSpeech(view.settings.vocabulary);
  } catch {
    // The words stay as they are; the desk tells of trouble by itself.
  }
}
