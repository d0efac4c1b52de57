import { count } from './format';

interface Said { happened: string; safe: string; todo: string }

const NOTHING_LOST = (safe: number): string => `Everything with a tick is safe: ${count(safe, 'entry', 'entries')} on disk.`;
const WAITING = (waiting: number): string => (waiting > 0 ? ` ${count(waiting, 'thing')} still not saved.` : '');

/** The frame around all places: trouble, new versions, problems with what was asked. */
export const frame = {
  skip: 'To the page',
  offline: 'Ready for use with no signal',
  notOffline: 'Not yet ready for use with no signal: keep this page open a moment.',
  update: {
    happened: 'A new version is ready.',
    safe: 'Nothing is changed in what is recorded.',
    take: 'Change over now',
    later: 'Later',
    changed: 'A new version was taken up in another window.',
    reload: 'Load it here too',
  },
  undone: 'Taken back',
  undoFailed: 'It could not be taken back: someone has changed it since.',
  notHere: 'There is no such place.',
  notHereTodo: 'Choose one below.',
  loadFailed: 'This part of the app could not be loaded.',
  loadFailedTodo: 'Load the page again. What is recorded is not touched.',
  reload: 'Load again',
  tryAgain: 'Try again',
  close: 'Close',
  openFailed: 'This job could not be opened.',
  openFailedTodo: 'It is untouched. Load the page again; if it stays so, save everything with the rescue page.',
  rescue: 'Rescue page',
  refused: 'That was not recorded.',
  unsaved: {
    happened: (n: number) => `${count(n, 'photo')} not saved.`,
    safe: (n: number) => (n === 1 ? 'It is kept in this window only: leave it open.' : 'They are kept in this window only: leave it open.'),
    again: 'Save again',
    unread: (n: number) => `${count(n, 'picture')} could not be read.`,
    unreadTodo: 'Take it again, or choose another file.',
  },
  trouble(code: string, safe: number, waiting: number): Said {
    const kept = NOTHING_LOST(safe) + WAITING(waiting);
    const said: Record<string, [happened: string, todo: string]> = {
      'quota-exceeded': ['The storage of this device is full: nothing more is saved.', 'Make room on the device, then try again. A job file put elsewhere keeps what is here.'],
      'transaction-aborted': ['The database refused to save.', 'Try again. If it stays so, hand over a job file and load the page again.'],
      'connection-lost': ['The database does not answer.', 'It is being opened again. Wait before you take more off.'],
      'newer-database': ['These records were written by a newer version.', 'Load the page again to get that version. Until then nothing is read and nothing is written.'],
      'closed-elsewhere': ['Another window needs the database for a new version.', 'Close this window, or load it again.'],
      'chunk-damaged': ['A piece of the record is damaged and was laid aside.', 'The rest works on. Bring in the latest job file to mend it.'],
      'worker-trapped': ['The part of the app that keeps the record stopped.', 'It is started again by itself. What has no tick yet is sent again.'],
      'private-window': ['This window keeps nothing: it is private, or storage is turned off.', 'Open asfound in an ordinary window before you record anything.'],
      'open-hung': ['The database does not open.', 'Close other windows of asfound, then load the page again.'],
      'read-failed': ['A photo or record could not be read.', 'Try again. The others are not touched.'],
    };
    const [happened, todo] = said[code] ?? ['Something went wrong while saving.', 'Try again.'];
    return { happened, safe: kept, todo };
  },
};
