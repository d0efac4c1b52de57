import type { Unreadable } from '../hand-over/why-unreadable';
import { bytes, count, number } from './format';
import type { Vocabulary } from './vocabulary';

const inBrackets = (detail: string): string => (detail ? ` (${detail})` : '');

const unreadable: Record<Unreadable['why'], { happened: string; todo: string }> = {
  'not-a-zip': { happened: 'This is not a job file, or only the first piece of one.', todo: 'Choose the file that asfound made under “Make a job file” or on its rescue page; its name ends in .zip. If it is that one, it was cut off on its way: fetch it again.' },
  'not-a-job-file': { happened: 'This file holds no job.', todo: 'Choose the .zip just as asfound made it, not its contents packed anew.' },
  damaged: { happened: 'This job file is damaged.', todo: 'Fetch it again from where it came. If it stays so, make another one on the device it is from.' },
  outside: { happened: 'The file could not be read from where it lies.', todo: 'If it lies in a cloud or on another device, save it on this one first, then choose it again.' },
  other: { happened: 'The file could not be read.', todo: 'Fetch it again from where it came.' },
};

/** Lists and job files out and in. */
export const handOver = (trade: Vocabulary) => ({
  title: 'Hand over',
  list: { title: 'Lists', which: 'Which list', lists: { parts: 'Parts', 'to-buy': 'To buy', 'to-send': 'To send' }, listSecond: { parts: 'all, with what they cost', 'to-buy': 'by supplier', 'to-send': `by ${trade.specialist}` }, decided: 'Of these, what is decided for it; the rest is counted.',
    lead: 'With route, quote and sums. Photos in it carry no location.', filter: 'Which parts', form: 'As', forms: { html: 'page with photos', csv: 'table for a spreadsheet' },
    formSecond: { html: 'opens anywhere, prints well', csv: 'CSV' }, chosen: (n: number) => count(n, 'part'), none: 'No part is like that: nothing to prepare.' },
  file: { title: 'Job file', out: 'Everything in one file: entries, photos, spoken notes.', warn: 'Photos are kept as the camera made them: they may hold the place where they were taken.', size: (n: number) => `about ${bytes(n)}`,
    holds: (photos: number, entries: number) => `${count(photos, 'photo')}, ${count(entries, 'entry', 'entries')}`,
    missing: (n: number) => ({ happened: `${count(n, 'photo or sound', 'photos or sounds')} could not be put into the file.`, safe: 'Everything else is in it.', todo: 'Bring in a job file that holds them, from another device or an earlier day; then make this one again.' }) },
  prepare: 'Prepare', preparing: (what: string) => `Preparing ${what}`, progress: (done: number, all: number) => (all > 0 ? `${number(Math.floor((done / all) * 100))} of 100` : 'under way'),
  stop: 'Stop', stopped: 'Stopped. Nothing was handed out; it can be started again.',
  ready: (name: string, size: number) => `${name}, ${bytes(size)}`, readyWord: 'Ready',
  share: 'Share', save: 'Save to this device', look: 'Look at it here', again: 'Prepare again', back: 'Back', print: 'Print',
  shared: 'Handed to the share sheet.', saved: 'Handed to the browser’s downloads.', cancelled: 'Not shared. The file is still ready here.',
  failed: (why: string) => ({ happened: 'It could not be prepared.', safe: 'The record is not touched.', todo: `Try again. If it fails again, the rescue page can save everything. (${why})` }),
  shareFailed: (why: string) => ({ happened: 'The share sheet refused it.', safe: 'The file is still ready here.', todo: `Save it instead, or try again. (${why})` }),
  renamed: (name: string) => `This system shares it as ${name}. Nothing in it is changed: take the last .txt off its name, or bring it in as it is.`,
  opensOver: { happened: 'This system shares no file of this kind: it opens over the app instead.', safe: 'Everything recorded stays as it is.', todo: 'When it is open, share it from there (the square with the arrow), “Save to Files”. Then close the app in the app switcher and open it again.' },
  copy: 'Copy it as text', copied: 'Copied. Paste it into a mail or a note.',
  arrived: { question: 'Is the file where you want it?', why: 'The app cannot see what became of it. Only a file that is there counts as handed out.', where: 'Look among the browser’s downloads, or where you put it.', yes: 'Yes, it is there', no: 'No',
    counted: 'Noted: the reminder starts anew.', notCounted: 'It does not count. The file is still ready here: save it once more, or share it.' },
  bigFile: 'Some share sheets refuse files above 50 MB: then save it.',
  bring: { title: 'Bring in a job file', lead: 'First you see what would happen; nothing is written before you say so.', pick: 'Choose a job file', reading: 'Reading the file', dry: 'What it would bring',
    newParts: 'new parts', newEntries: 'new entries', known: 'entries already here', touched: 'things that changed here', newPhotos: 'new photos and sounds', photosHere: 'photos and sounds already here', photosIn: 'photos and sounds', missing: 'photos and sounds missing from the file', conflicts: 'values to settle afterwards', otherJob: 'It will stand as a job of its own.', sameJob: 'It holds this job: both become one.',
    nothingNew: 'Everything in it is here already.', go: 'Bring it in', leave: 'Leave it', bringing: 'Bringing it in', done: 'Brought in', report: 'What was brought in', another: 'Another file', toProblems: 'Settle them', openIt: 'Open that job',
    unreadable: ({ why, detail }: Unreadable) => ({ happened: unreadable[why].happened, safe: 'Nothing was written; the record is as before.', todo: `${unreadable[why].todo}${inBrackets(detail)}` }),
    partFailed: ({ detail }: Unreadable) => ({ happened: 'It was not brought in completely.', safe: 'What was ticked before is as it was. What arrived is kept; bringing the file in again adds only the rest.', todo: `Try again.${inBrackets(detail)}` }),
    damaged: (n: number) => `${count(n, 'piece')} of the file damaged and left out` },
  dockets: trade.dockets,
  papers: { columns: { from: `supplier or ${trade.specialist}`, surcharge_now: `${trade.surcharge} now` }, prices: { surcharge: trade.surcharge }, nobody: `No ${trade.specialist} named` },
});
