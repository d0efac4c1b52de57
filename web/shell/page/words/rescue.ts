// Stands alone: the rescue page must work when nothing else does.

const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
const day = (at: number): string => new Date(at).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
const bytes = (n: number): string => `${Math.max(0.1, n / 1e6).toFixed(1)}\u00a0MB`;

/** The rescue page, which takes nothing else from the app. */
export const rescue = {
  title: 'Rescue',
  lead: 'This page reads what is stored in this browser without the app, and saves it to a file. It changes nothing.',
  looking: 'Looking at what is stored.',
  nothing: 'Nothing is stored here, in this browser and at this address.',
  closed: (why: string) => `The storage does not open: ${why}. Close all other windows of the app and load this page again.`,
  job: (name: string, entries: number | { single: number; bundles: number }, last: number | null) =>
    `${name || 'A job without a name'}: ${typeof entries === 'number' ? count(entries, 'entry', 'entries') : `${count(entries.bundles, 'bundle of entries', 'bundles of entries')}, ${count(entries.single, 'single entry', 'single entries')}, some not readable here`}${last === null ? '' : `, the last of ${day(last)}`}`,
  back: 'Back to the app',
  photos: (n: number) => `${count(n, 'photo or sound', 'photos and sounds')}, for all jobs together`,
  damaged: (n: number) => `${count(n, 'damaged piece', 'damaged pieces')}, saved as found`,
  prepare: 'Put everything in a file',
  working: (done: number, all: number) => `${done} of ${all}`,
  save: (name: string, size: number) => `Save ${name} (${bytes(size)})`,
  share: (name: string) => `Share ${name}`,
  opensOver: 'This system shares no file of this kind: it opens over this page. Share it from there (the square with the arrow), “Save to Files”; then close the app in the app switcher and open it again.',
  failed: (why: string) => `It stopped: ${why}. What is stored is as it was.`,
  unread: (n: number) => `${count(n, 'piece')} could not be read and ${n === 1 ? 'is' : 'are'} not in the file.`,
  done: 'Keep the file somewhere else than on this device. To bring it back: open the app, Hand over, Bring in a job file.',
  readMe: `Saved by the rescue page of asfound from the storage of a browser.

photos      photos and spoken notes, as they were taken
chunks      what was said, entry by entry, in a form for programs
quarantine  what was found damaged, as it was found
jobs.json   the jobs

To bring it back: open asfound, Hand over, Bring in a job file. With several jobs in
one file, each has its chunks in a folder of its own; pack that folder alone with photos.

The photos are originals. They may hold the place where they were taken.
`,
};
