import type { BearingSuffix } from '../../bridge/protocol';
import { count, listed } from './format';
import type { Vocabulary } from './vocabulary';

/** The sheet of one part. */
export const sheet = (trade: Vocabulary) => ({
  part: 'Part',
  gone: { first: 'This part is not in the job.', then: 'It may belong to another job, or its job file was not brought in yet.', go: 'To the parts' },
  noName: 'no name yet',
  toSections: 'On this sheet',
  photos: { none: 'No photo yet', of: (moment: string, n: number, all: number) => `${moment} · photo ${n} of ${all}`, struck: 'struck out',
    previous: 'Photo before', next: 'Photo after', open: (n: number) => `Open photo ${n}`, add: 'Add photos', added: (n: number) => `${count(n, 'photo')} added` },
  routes: { link: 'Routes', none: 'no quote yet', chosen: (route: string) => `${route} chosen`, open: (n: number) => `${count(n, 'quote')}, none chosen`, enter: 'Enter quotes and choose' },
  where: { title: 'Where it lies', nowhere: 'nowhere yet', move: 'Move', moved: (place: string) => `Moved to ${place}`, taken: 'Lies nowhere now', takeOut: 'Take it out of there' },
  refit: { title: 'Refit', step: 'Its step', finished: 'Work on it', isFinished: 'done', notFinished: 'not done', finishedSaid: 'Work done', notFinishedSaid: 'Work not done', paint: 'Before or after the paint', paints: { before: 'before', after: 'after', '': 'as its assembly' }, paintSaid: (what: string) => `Paint: ${what}`,
    time: 'Own time to put it on', timeHint: 'Empty: ten minutes, as a starting value.', wrongTime: 'Give hours, like 2, 1:30 or 45 min.' },
  word: { title: 'First word', label: 'At the strip one word will do', said: (what: string) => `Said: ${what}`, open: 'nothing said yet',
    options: { 'looks-good': 'looks good', doubtful: 'doubtful', scrap: 'scrap' } },
  notes: { title: 'Notes', add: 'Add a note', label: 'Note', put: 'Put the note down', put_done: 'Note put down', spoken: 'Spoken note', play: 'Play', stop: 'Stop', playing: 'playing',
    unreadable: 'This spoken note cannot be read here.', strike: 'Strike out this note', struck: 'Note struck out', bring: 'Bring back', none: 'none', remark: 'Remark', unfinished: 'not put down yet' },
  joints: { title: 'Joints', none: 'none recorded', bag: (bag: string) => `bag ${bag}`, noName: 'Joint', order: 'in the order it came off', piece: 'piece' },
  named: { title: 'Name and numbers', name: 'Name', quantity: 'Pieces', tag: 'Tag', makers_number: 'Maker’s number', casting_number: 'Casting number', material: 'Material', mass: 'Mass', area: 'Surface of one piece', areaHint: 'For prices by area: what is plated, painted or coated.',
    side: 'Side', assembly: 'Assembly', empty: 'empty', sideOptions: { '': 'as its assembly', left: 'left', right: 'right' }, noAssembly: 'none',
    saved: (what: string) => `${what} put down`, cleared: (what: string) => `${what} emptied`, notANumber: 'Give it as a figure, like 2 or 2.5.', wholeNumber: 'Give a whole number, from 1.', notADay: 'Give the whole day: day, month and year.', stage: 'Stage of ordering', stageHint: 'What is ordered first is in stage 1. Empty: as its assembly.', wrongStage: 'Give a whole number, from 1 to 99.', put: 'Put down' },
  stamped: {
    size: (bore: string, outside: string, width: string) => `${bore} × ${outside} × ${width} mm`,
    bearing: (designation: string, size: string) => `Bearing ${designation}: ${size}, bore, outside, width.`, seal: (size: string) => `Shaft seal: ${size}, shaft, bore, width.`,
    orWidth: (width: string) => `Some tables give a width of ${width} mm: measure before ordering.`, unsourced: 'From memory, no table at hand: measure before ordering.',
    suffixes: { 'two-seals': 'Rubbing seals on both sides.', 'one-seal': 'A rubbing seal on one side.', 'two-shields': 'Shields on both sides.', 'one-shield': 'A shield on one side.', c2: 'Less play than normal.', c3: 'More play than normal.', c4: 'Much more play than normal.', 'snap-ring': 'With its snap ring.', 'snap-ring-groove': 'Groove for a snap ring.' } satisfies Record<BearingSuffix, string>,
  },
  marks: { title: 'Marks', single_use: 'single use', cannot_be_bought: 'cannot be bought', missing_from_start: 'missing from the start', wrong_piece: 'wrong piece fitted', stuck: 'stuck', safety_critical: 'safety-critical', caution: 'Brakes, steering, wheels, seat belts: renew it, or have it tested where there is any doubt. No welding or bending at home. The manual, local codes and a competent inspection come before the road.',
    tried: 'What was tried', none: 'none', set: (what: string) => `Marked: ${what}`, unset: (what: string) => `No longer marked: ${what}` },
  off: { title: 'On or off', off: 'off', on: 'on the vehicle' },
  split: { title: 'Split the tag', lead: 'Each new tag gets its own number and what is known of this part; this tag keeps the rest.', how: 'How many new tags', name: (n: number) => `Name of new tag ${n}`, go: 'Split',
    done: (n: number) => `Split into ${count(n + 1, 'tag')}`, from: 'Split from', into: 'Split into', link: 'Split' },
  conflict: { title: 'Two values, one must hold', lead: 'Two devices wrote this without knowing of one another. Both are kept until you settle it.', take: 'This one holds', settled: (what: string) => `${what} settled`, at: (when: string) => `written ${when}`, emptied: 'emptied' },
  history: { title: 'History', all: 'All that was written', undo: 'Undo the latest', undone: 'Undone' },
  strike: { go: 'Strike out', done: 'Part struck out', bring: 'Bring back', brought: 'Part brought back', is: 'This part is struck out. It is left out of lists and sums.' },
  units: { kg: 'kg', lb: 'lb' },
  trade: { place: trade.stores },
  list: (things: readonly string[]) => listed(things),
});
