import type { OutFor } from '../../bridge/protocol';
import { KEEP, capital, count, number } from './format';
import type { Vocabulary } from './vocabulary';

/** Where one part is, what is missing, what is out of the house, how a part is kept. */
export const where = (trade: Vocabulary) => ({
  title: 'Where is it?', find: 'Tag, name, number, note or place', second: (n: number) => count(n, 'part'), foundCount: (n: number) => (n ? `${count(n, 'part')} found` : 'Nothing answers to that.'),
  none: { first: 'Nothing answers to that.', then: 'Try the tag, part of the name, or a word of a note. One wrong letter is no matter.' },
  noParts: { first: 'There are no parts yet.', then: 'They come at Teardown, each with its tag.', go: 'Teardown' },
  more: (n: number) => `${count(n, 'more part')}: type more of it`,
  scan: 'Scan its tag',
  gone: { first: 'This part is not in the job.', then: 'It may not have been brought in yet.' },
  way: 'The way there', step: (kind: string, code: string) => [kind, code ? `tag ${code}` : ''].filter(Boolean).join(', '), noPhoto: 'no photo yet', photoOf: (name: string) => `Photo of ${name}`,
  hereIt: 'here',
  nowhere: 'It lies nowhere by the record.', nowhereTodo: 'Scan it, then the place you lay it in.',
  vehicle: 'It is on the vehicle.', refitted: 'It is refitted.', oldHere: 'The new one is on. The old one lies here.',
  out: (what: OutFor, who: string) => capital([what === 'loan' ? 'on loan' : trade.outForWork, ...(who ? [what === 'loan' ? 'to' : trade.outWith, who] : [])].join(' ')),
  due: (when: string) => `due ${when}`, since: (when: string) => `since ${when}`,
  late: (days: number, hasDue: boolean) => (hasDue ? `${count(days, 'day')} late` : `out for ${count(days, 'day')}`),
  missed: (place: string, when: string) => `Missing from ${place}: the count of ${when} did not find it.`,
  missedTodo: 'Look round the places near it, and where its assembly lies.',
  seen: (when: string) => `Last seen here ${when}.`, seenElsewhere: (place: string, when: string, record: string) => `Seen in ${place} on ${when}, though the record says ${record}.`,
  found: 'Found it here', foundDone: 'Seen where it lies', move: 'Move it', moved: (place: string) => `Laid in ${place}`,
  next: 'Where it may lie', nextLead: 'Common practice: heavy low, fragile high, sheet metal on edge, left and right apart.', lay: (place: string) => `Lay it in ${place}`,
  sheet: 'All about it', scanTo: 'Scan it to its place',

  missing: {
    title: 'What is missing', second: (n: number) => (n ? count(n, 'part') : 'nothing'), all: 'Everything is where it should be.', allThen: 'As far as anybody looked: nothing was missed by a count, nothing is out too long, nothing off lies nowhere.',
    missed: 'Not found by the last count', late: 'Out too long', nowhere: 'Off, and in no place', unseen: 'Not seen for long',
    unseenLead: (days: number) => `Nobody scanned, counted or moved these for ${count(days, 'day')} (a starting value).`,
    lateLead: (days: number) => `Past the day it was due, or out more than ${count(days, 'day')} with no day said (a starting value).`,
    missedSince: (place: string, when: string) => `missing from ${place} since ${when}`, unseenSince: (place: string, when: string) => `${place}, last seen ${when}`, rest: (n: number) => `and ${number(n)} more`,
  },
  house: {
    title: 'Out of the house', onLoan: 'on loan', none: 'Nothing is out of the house.', noneThen: 'Lend a part or send it for work from its sheet.', second: (n: number, late: number) => [count(n, 'part'), late ? `${number(late)} late` : ''].filter(Boolean).join(', '),
    worth: 'Another of each would cost', unpriced: 'Nobody has quoted for another of any of them.', worthSecond: (unpriced: number) => (unpriced ? `not counted: ${count(unpriced, 'part')} with no quote for another` : 'by the cheapest quote for each'),
    inAgain: 'In again', inAgainDone: (name: string) => `${name} is in again`,
    send: 'Send for work or lend', sendTitle: (name: string) => `${name} leaves the house`, for: 'What for', fors: { work: 'Work', loan: 'Loan' } satisfies Record<OutFor, string>,
    who: 'Who has it', day: 'Due back on', dayHint: 'Leave it empty when no day was said.', go: 'It leaves now', gone: (name: string) => `${name} is out of the house`,
  },
  care: {
    title: 'Keeping and lifting', marks: 'How it is kept', oiled: 'Oiled', wrapped: 'Wrapped', fragile: 'Fragile', two: 'Two to lift', set: (word: string) => `Noted: ${word.toLowerCase()}`, unset: (word: string) => `No longer ${word.toLowerCase()}`,
    size: 'Size', sizeHint: 'Long × wide × high, like 280 × 280 × 150', sizeWrong: 'Three sizes, like 280 × 280 × 150.', build: 'Built', builds: { solid: 'Solid', hollow: 'Hollow', sheet: 'Sheet' }, notSaid: 'Not said',
    saved: 'Size saved', cleared: 'Size taken out', builtSaved: 'Build saved',
    guess: (mass: string, least: string, most: string) => `About ${mass} by its size and material: ${least} to ${most}.`,
    guessWide: 'Say how it is built, and the guess gets closer.', known: (mass: string) => `${mass} by the record.`, noGuess: 'Say size and material, and its mass is guessed.',
    lift: { two: 'Two people lift it.', 'two-at-reach': 'One can lift it close to the body, two at arm’s reach.', alone: 'One can lift it.' }, liftSource: `Two from about 15${KEEP}kg, at arm’s reach from 10${KEEP}kg: common practice.`,
  },
  mass: (figure: string, unit: string) => `${figure}${KEEP}${unit}`,
});
