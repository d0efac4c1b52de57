import { bytes, count, number } from './format';

/** Whether everything is safe, and what would make it safer. */
export const safeKeeping = {
  title: 'Safe keeping',
  kept: 'Everything is kept', waiting: (n: number) => `${count(n, 'entry', 'entries')} not on the disk yet`, keptNotPromised: 'Kept, not promised', trouble: 'Not everything is kept',
  counts: (photos: number, entries: number) => `${count(photos, 'photo')}, ${count(entries, 'entry', 'entries')},`, disk: 'all on this device’s disk',
  room: 'Room', more: (photos: number) => `room for about ${number(photos)} photos more`, roomUnknown: 'This browser does not say how much room there is.', roomShort: 'Room is short: make a job file and save it elsewhere before the next session.',
  of: (used: number, all: number) => `${bytes(used)} of ${bytes(all)}`,
  cleared: 'Cleared by the browser?', no: 'no', mayBe: 'may be',
  promised: 'The browser has promised not to clear this app when the device runs short of room.',
  notPromised: 'The browser has not promised to keep this app’s storage when the device runs short of room, or when it was not opened for long.',
  notPromisedDo: 'Put the app on the home screen, open it from there now and then, and make job files.',
  askAgain: 'Ask the browser to promise', asked: { yes: 'The browser has promised.', no: 'The browser did not promise. Putting the app on the home screen often changes that.' },
  privateWindow: { happened: 'This is a private window.', safe: 'Nothing in it outlives the window.', todo: 'Make a job file before you close it, or open the app in an ordinary window.' },
  last: 'Last job file', never: 'never', made: 'made', since: 'photos not in it', days: (day: string, ago: string) => `${day}, ${ago}`,
  today: 'today', ago: (n: number) => (n === 0 ? 'today' : `${count(n, 'day')} ago`), due: 'reminder due',
  lost: (photos: number, entries: number) => (photos > 0 ? `If this device is lost, ${photos === 1 ? 'that photo is' : `those ${number(photos)} photos are`} lost.` : entries > 0 ? 'If this device is lost, what was written since is lost.' : ''),
  neverLost: (photos: number) => `If this device is lost, ${photos === 1 ? 'the photo is' : `all ${number(photos)} photos are`} lost.`, saves: 'A job file put anywhere else saves them.', safe: 'A job file holds everything up to then. Keep it somewhere else than this device.',
  remind: { lead: 'Remind me after ', or: ' or ', photos: (n: number) => count(n, 'photo'), days: (n: number) => count(n, 'day'), title: 'When to remind', photosLabel: 'After so many photos', daysLabel: 'Or after so many days', put: 'Set', set: 'Reminder set', fits: 'Without the browser’s promise the reminder comes at half of it.', wrong: 'Give a whole number, from 1.' },
  make: 'Make a job file', cost: (size: number) => `about ${bytes(size)}`, rescue: 'Rescue page', rescueLead: 'The rescue page opens the storage without the app and saves all photos and entries to a file.',
  selfTest: 'Test this device',
  asking: 'Looking at the storage.',
};
