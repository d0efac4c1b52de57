import { desk } from '../../bridge/desk';
import { openJob } from '../frame/start';

/** What the ids of every edition of the sample begin with. */
const SAMPLE = '612073616d706c65';

/** Its job file lies beside the page, and is kept with the app. */
const FILE = 'sample.zip';

/** Whether a job is the sample, not one of somebody's own. */
export function isSample(job: string): boolean {
  return job.startsWith(SAMPLE);
}

/** Nothing when it is open; else why it is not. */
export type NotOpened = 'not-fetched' | 'not-brought-in' | null;

/** Brings the sample in as any job file comes in, and opens it. Where it is here already, it is opened as it stands. */
export async function openSample(progress: (done: number, of: number) => void): Promise<NotOpened> {
  const file = await fetchSample();
  if (!file) return 'not-fetched';
  try {
    const dry = await desk.readJobFile(file);
    const here = (await desk.jobs()).some(({ id }) => id === dry.job);
    if (!here) {
      const { trouble, damaged } = await desk.bringIn(file, dry, progress);
      if (trouble || damaged.length > 0) return 'not-brought-in';
    }
    return dry.job !== undefined && await openJob(dry.job) ? null : 'not-brought-in';
  } catch {
    // The desk tells of trouble with storing by itself.
    return 'not-brought-in';
  }
}

async function fetchSample(): Promise<File | null> {
  try {
    const answer = await fetch(new URL(FILE, document.baseURI));
    return answer.ok ? new File([await answer.blob()], FILE, { type: 'application/zip' }) : null;
  } catch {
    return null;
  }
}
