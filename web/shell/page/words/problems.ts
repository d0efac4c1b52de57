import type { Code, Hint, Problem } from '../../bridge/protocol';
import { count, number } from './format';
import { fieldNames } from './history';
import type { Vocabulary } from './vocabulary';

type Values = Problem['values'];
type Sentence = (values: Values, field: string) => string;

const tag = (text: string | undefined): string => (text ?? '').padStart(4, '0');
const inQuotes = (text: string | undefined): string => (text ? `“${text}”` : 'a record');

// What happened, by code. Values that a problem does not carry leave the sentence whole.
const happened: Record<Code, Sentence> = {
  conflict: (_, field) => `${field || 'A value'} was written twice, by devices that did not know of one another.`,
  'tag-twice': ({ tag: n }) => `${n ? `Tag ${tag(n)}` : 'One tag number'} is on more than one part.`,
  'block-twice': () => 'Two devices drew tag numbers from the same block.',
  loop: ({ name }) => `${inQuotes(name)} lies inside itself, by way of others.`,
  dangling: (_, field) => `${field || 'Something'} points at a record that is not here.`,
  'in-struck-out': ({ name }) => `${name ? inQuotes(name) : 'Something'} belongs to what was struck out.`,
  'kind-missing': () => 'Values arrived without what they are values of.',
  'kind-twice': () => 'A record was said to be two different things.',
  'value-unreadable': (_, field) => `${field || 'A value'} was written by a newer version and cannot be read by this one.`,
  'field-out-of-place': (_, field) => `${field || 'A value'} stands where this version does not know it.`,
  'overwrite-loop': () => 'Entries say of one another that they came later.',
  'entry-twice': () => 'Two different entries carry the same number.',
  'entries-missing': ({ first, last }) => {
    const n = Number(last) - Number(first) + 1;
    return `${n > 0 ? count(n, 'entry', 'entries') : 'Entries'} of another device ${n === 1 ? 'is' : 'are'} missing.`;
  },
  'choice-stale': () => 'The quote that was chosen is struck out, or no longer allowed.',
  'other-currency': () => 'A quote is in another currency than the job.',
  'unknown-record': () => 'What you wanted to change is not in this job.',
  'wrong-kind': () => 'That cannot be done with this kind of thing.',
  'id-taken': () => 'A record of this number is there already.',
  // The limits are told only where they are plain numbers: money and mass are kept in the smallest unit.
  'out-of-bounds': ({ what, least, most }, field) => `${field || what || 'The value'} is outside what is accepted${what === 'tag' || what === 'pieces' ? `: from ${least ?? ''} to ${most ?? ''}` : what === 'price' ? ': it cannot be less than nothing' : ''}.`,
  missing: (_, field) => `${field || 'A value'} is needed.`,
  'nothing-to-undo': () => 'Nothing is left to undo there: it was changed again since.',
  damaged: () => 'A piece of the record is damaged: it is not what was written.',
  'newer-form': () => 'A piece of the record was written by a newer version.',
  'not-ours': () => 'This is not a file of asfound.',
  'blob-missing': () => 'A photo or sound named in the record is not on this device.',
  'other-job': () => 'The file holds another job.',
  'heavy-question': () => 'This takes too long to be worked out while you record.',
  'not-an-answer': () => 'The answer is not one of those to its question.',
  'pair-apart': () => 'Both sides of an axle are decided for different routes.',
  'tyre-unreadable': ({ text }) => `${text ? inQuotes(text) : 'The tyre marking'} is no tyre size that can be read.`,
  'ratios-unreadable': ({ text }) => `${text ? inQuotes(text) : 'The list of gears'} cannot be read as gear ratios.`,
  'labels-do-not-fit': ({ what, side, needs, has }) => (what === 'figures' ? 'The figures of the sheet are no sheet of labels.' : `${what === 'page' ? 'The labels need more than the sheet has' : what === 'pitch' ? 'The labels lie over one another' : 'The labels are too small'}: ${side === 'height' ? 'height' : 'width'} ${needs ?? ''} mm needed, ${has ?? ''} mm there.`),
  'limit-crossed': () => 'Nothing can keep this limit: its least is more than its most.',
  'refit-circle': () => 'Parts go on after one another in a circle: no order can keep all of it.',
  'still-loose': ({ joints }) => `${count(Number(joints) || 1, 'joint')} ${joints === '1' ? 'is' : 'are'} still loose.`,
};

const safe: Partial<Record<Code, string>> = {
  conflict: 'Both values are kept.',
  'tag-twice': 'Both parts are kept, with their photos.',
  loop: 'Nothing in it is lost; it is shown at the outermost level.',
  dangling: 'What is here is kept and joins up when the rest arrives.',
  'in-struck-out': 'It is kept and can be found.',
  damaged: 'It was put aside; everything else is as it was.',
  'newer-form': 'It is kept as it is, not touched.',
  'value-unreadable': 'It is kept as it is and handed on.',
  'blob-missing': 'Its entry, marks and words are here.',
  'entries-missing': 'Everything that arrived is kept.',
  'choice-stale': 'The decision stays in the history.',
  'pair-apart': 'Both decisions stand.',
  'not-an-answer': 'It is kept; until it is put right, the question counts as open.',
  'tyre-unreadable': 'It is kept as it was written.',
  'ratios-unreadable': 'They are kept as they were written.',
  'limit-crossed': 'It is kept, and nothing is judged by it until it is put right.',
  'refit-circle': 'Every part still stands in the order once; one of the rules is not kept.',
  'still-loose': 'The list of what is still loose is kept.',
};

const hints: Record<Hint, string> = {
  'settle-values': 'Look at both and say which one holds.',
  'retag-one': 'Give one of the parts a new tag.',
  'move-one-out': 'Move one of them out of the circle.',
  'bring-in-other': 'Bring in the job file of the other device.',
  'use-newer': 'Open it with the newer version.',
  'bring-back-or-move': 'Bring back what was struck out, or move what lies there.',
  'choose-again': 'Choose again among the quotes.',
  'enter-in-job-currency': 'Enter the price in the currency of the job.',
  'correct-value': 'Correct it and put it down again.',
  'fetch-again': 'Bring the file in again from where it came.',
  'measure-rolling': 'Measure how far it rolls in one turn, or take its turns a mile from a data book.',
  'drop-rule': 'Strike out one of the rules.',
  'tighten-first': 'Tighten what is loose, tick it, and say it again.',
  'ask-reckoning': 'It is worked out beside it: open Certainty again.',
};

/** What needs a person: a sentence for each code. */
export const problems = (trade: Vocabulary) => ({
  title: 'What needs you', second: (n: number) => (n ? `${number(n)} open` : 'nothing'),
  none: { first: 'Nothing needs you.', then: 'Values that two devices wrote, tags used twice and whatever is missing would stand here.' },
  happened: ({ code, severity, values, place }: Problem) => (code === 'loop' && severity === 'error' ? (place.field === 'other' ? 'Nothing goes on after itself.' : 'It would lie inside itself, by way of others.') : happened[code](values, place.field ? fieldNames[place.field] : '')),
  safe: ({ code, severity }: Problem) => (severity === 'error' ? 'Nothing was changed.' : safe[code] ?? 'Nothing is lost.'),
  todo: ({ hints: which }: Problem) => which.map((hint) => hints[hint]).join(' Or: '),
  /** All of it in one, for a line. */
  sentence(problem: Problem): string {
    return [this.happened(problem), this.safe(problem), this.todo(problem)].filter(Boolean).join(' ');
  },
  go: { part: 'Open the part', photo: 'Open the photo', place: `Open ${trade.stores}`, routes: 'To its routes', bring: 'Bring in a job file', history: 'What was written', refit: 'Open Refit' },
  retag: 'New tag for this one', retagLabel: 'Tag', retagged: (n: string) => `Tag is ${n} now`, retagWrong: 'Give a free number, from 1.',
  conflicts: 'Two values', others: 'Other', count: (n: number) => number(n),
  moveOut: (name: string) => `Take ${name} out`, movedOut: (name: string) => `${name} taken out of the circle`, bring: 'Bring back', brought: 'Brought back',
  thing: { job: 'Job', device: 'Device', block: 'Tag block', vehicle: 'Vehicle', assembly: 'Assembly', part: 'Part', joint: 'Joint', piece: 'Piece', photo: 'Photo', mark: 'Mark', note: 'Note', slice: 'Sound', place: 'Place', quote: 'Quote', choice: 'Decision', before: 'Before', cover: 'Kit content', purchase: 'Purchase', finding: 'Finding', reading: 'Reading', limit: 'Limit', instrument: 'Instrument', 'own-family': 'Family', 'own-check': 'Question', caution: 'Caution', supplier: 'Supplier or specialist', tier: 'Carriage', rule: 'Fit rule', gearing: 'Gearing', plan: 'Plan that was kept', delivery: 'Delivery', outing: 'Out of the house', count: 'Count', sighting: 'Seen', 'goes-after': 'Goes on after', consumable: 'Consumable', fluid: 'Fluid', commissioning: 'Commissioning' },
});
