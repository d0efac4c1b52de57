import type { Circle, EveningItem, Paint, RefitState, StepState } from '../../bridge/protocol';
import { count, listed, number } from './format';
import { lacks } from './refit-lacks';
import type { Vocabulary } from './vocabulary';

/** Putting it together again. */
export const refit = (trade: Vocabulary) => ({
  title: 'Refit', step: (n: number, of: number) => `step ${n} of ${of}`, count: (n: number) => count(n, 'assembly', 'assemblies'), parts: (n: number) => count(n, 'part'), noName: 'no name yet',
  lacks: lacks(trade),
  none: { first: 'Nothing is off yet.', then: 'What you take off in Teardown goes on again here, last off first.', go: 'Go to Teardown' },
  gone: { first: 'Nothing of this was off.', then: 'Refit begins with what came off. It may belong to another job, or its job file was not brought in yet.', go: 'To Refit' },
  states: { ready: 'ready', blocked: 'blocked', own: 'yours to do', refitted: 'refitted' } satisfies Record<RefitState | 'own', string>,
  groups: { ready: 'Ready to start', own: 'Yours to do first', blocked: 'Waiting', refitted: 'Together again' } satisfies Record<RefitState | 'own', string>,
  blockedBy: (n: number) => `blocked by ${number(n)}`, earliest: (day: string) => `earliest ${day}`, noDate: 'no date known', ownBy: (n: number) => `${count(n, 'thing')} of yours to do`,
  fitted: (n: number, of: number) => `${number(n)} of ${number(of)} on`, tried: (n: number) => `${number(n)} on for trial`, left: (time: string) => `${time} of work left`, starting: 'starting value', nowhere: (n: number) => `${count(n, 'part')} in no place`,
  blocks: 'What stands in the way', goOn: 'Go on', begin: 'Begin', resume: (name: string) => `${name}, where you were`, isReference: 'kept whole as the reference', hasReference: (name: string) => `${name} is kept whole: its photos lie beside`,
  outside: { title: 'In no assembly', line: (n: number) => `${count(n, 'part')} off and in no assembly`, lead: 'They stand in no order with the others. Put each into its assembly on its sheet, or refit them here.', },
  circles: { title: 'Goes round in a circle', said: (names: readonly string[], { paint }: Circle) => `${listed(names)} wait for one another${paint ? ', by way of the paint' : ''}. Strike out one of the rules: until then one of them is not kept.` },
  loose: {
    title: 'Still loose', count: (n: number) => number(n), none: 'nothing', here: 'in this assembly', all: (n: number) => count(n, 'joint'), inAssembly: (n: number) => `Still loose: ${number(n)}`, noneInAssembly: 'Nothing loose',
    lead: 'Run in by hand, or not ticked yet. It stands in the way of lowering and of the road.', empty: { first: 'Nothing is loose.', then: 'Every joint of what is on was ticked as tight.' },
    now: 'To tighten now', atHeight: 'To tighten at ride height', heightLead: 'Once it stands on its wheels: rubber bushes are clamped where they will work.', joint: (name: string) => (name ? `Joint ${name}` : 'Joint'), byHand: 'finger-tight', unsaid: 'nobody has ticked it',
    tight: 'Tight', tightOf: (joint: string, part: string) => `Tight: ${joint}${part ? `, ${part}` : ''}`, tightened: (joint: string) => `${joint} is tight`, checks: 'Second check', checksLead: 'Tight, and gone over a second time: with the wrench set again, nut by nut.', checked: 'Checked', checkedOf: (joint: string, part: string) => `Checked again: ${joint}${part ? `, ${part}` : ''}`, checkedDone: (joint: string) => `${joint} checked a second time`,
    noPart: 'holds no part that is named', open: (n: number) => `${count(n, 'joint')} not checked a second time`,   },
  gates: {
    anyway: { title: 'On the road all the same?', lead: 'By the record this is left to do. The manual, local codes and whoever inspects it come first.', wheels: 'It does not stand on its wheels.', assemblies: (n: number) => `${count(n, 'assembly', 'assemblies')} not together.`, lines: (n: number) => `${count(n, 'line')} of commissioning open.`, fluids: (n: number) => `${count(n, 'fluid')} ${n === 1 ? 'is' : 'are'} not filled in.`, unchecked: (n: number) => `${count(n, 'joint')} not checked a second time.`, go: 'On the road all the same', leave: 'Leave it' },
    title: 'Lowering and the road', lower: 'It stands on its wheels', road: 'It is on the road', lowered: 'It stands on its wheels.', onTheRoad: 'It is on the road.', lowerDone: 'Lowered on to its wheels', roadDone: 'On the road', raise: 'It is on stands again', raised: 'On stands again', offRoad: 'It is off the road again', offRoadDone: 'Off the road again',
    lowerHeld: (n: number) => `${count(n, 'joint')} loose: in the way of lowering.`, roadHeld: (n: number) => `${count(n, 'joint')} loose: in the way of the road.`, free: 'Nothing loose is in the way.', noVehicle: 'Name the vehicle first, in Vehicles and donors.', toVehicle: 'Vehicles and donors',
    held: { happened: (n: number) => `${count(n, 'joint')} ${n === 1 ? 'is' : 'are'} still loose.`, safe: 'Nothing was changed.', todo: 'Tighten what stands in the list, tick it, then say it again.' },
  },
  evening: {
    title: 'What can I do this evening?', label: 'Hours at hand', chips: [['30', '½ h'], ['60', '1 h'], ['120', '2 h'], ['180', '3 h'], ['240', '4 h']] as const, other: 'Or', otherHint: 'As 1:30, 2.5 or 45 min', wrong: 'Give hours, like 2, 1:30 or 45 min.',
    kinds: {
      refit: ({ steps, whole }: EveningItem) => (whole ? `${count(steps, 'step')}, and it is done` : `${count(steps, 'step')} before something is in the way`), compare: () => 'compare what came in with the old one', repair: () => 'repair it at the bench', 'take-off': () => 'take it off again, for finish', finish: () => 'finish it', fetch: () => 'take it off the donor', decide: () => 'judge it, and decide what happens to it',
    } satisfies Record<EveningItem['kind'], (item: EveningItem) => string>,
    time: (time: string) => `about ${time}`, noTime: 'nobody has said how long', fits: 'fits', fitsSome: (n: number, of: number) => `${number(n)} of ${number(of)} fit`, fitsNot: 'too long', picked: (time: string, of: string) => `${time} of ${of} are filled.`, more: (n: number) => `${number(n)} more`, pickedNone: (of: string) => `Nothing fits into ${of}: each takes longer.`, none: 'Nothing is left that can be done without waiting.', starting: 'Times are starting values: say your own on each assembly.',
  },
  assembly: {
    steps: 'Steps, last off first', about: 'About this assembly', allOn: 'All of it is on', toStep: (n: number, name: string) => `Step ${n}: ${name}`,
    isNew: 'new, in place of the old', fromDonor: 'from the donor, in place of the old', withoutOrder: 'never stood in the order of removal', paint: 'Before or after the paint', paints: { before: 'before', after: 'after', '': 'either' }, paintHint: 'Holds for its parts, unless one says otherwise.', paintSaid: (what: string) => `Paint: ${what}`,
        time: 'Own time to put it together', timeHint: 'All of it, once everything is here. Empty: ten minutes a part, as a starting value.', wrongTime: 'Give hours, like 2, 1:30 or 45 min.', timeSaid: 'Own time put down', timeCleared: 'Own time emptied',
    reference: 'Keep it whole as the reference', referenceHint: 'The other side is the best drawing there is: stripping this one is asked about until that is together again.', kept: 'Kept whole as the reference', notKept: 'No longer the reference', keeps: 'kept whole', strips: 'not kept',
    sheet: 'Sheet for the wall', sheetLead: 'All steps on paper: large, with boxes to tick.', print: 'Print for the wall', photos: 'Photos on it carry no location.', toBefore: 'Before it was slackened', freeJoints: 'Joints that hold no named part',
  },
  rules: {
    title: 'Goes on after', none: 'no rule', lead: 'Where the reverse of removal is not enough: this goes on only when that is on.', add: 'Add a rule', this: 'This', after: 'Goes on after', assembly: (name: string) => `${name} (assembly)`, pick: 'Choose …', needsBoth: 'Choose both.', same: 'Choose two different things.', put: 'Put the rule down', done: 'Rule put down', said: (one: string, other: string) => `${one} goes on after ${other}`, strike: 'Strike out', struck: 'Rule struck out',
  },
  consumables: {
    title: 'Uses up', none: 'nothing said', add: 'Add what it uses up', name: 'What', likely: ['Grease', 'Sealant', 'Locking compound', 'Gasket paper', 'Engine oil', 'Anti-seize', 'Copper washer'], quantity: 'How many', here: 'Here', isHere: 'here', notHere: 'not here', some: (n: number, of: number) => `${number(n)} of ${number(of)} here`, due: 'Due', dueOn: (day: string) => `due ${day}`, put: 'Put it down', done: (name: string) => `${name} put down`, needsName: 'Say what it is.', setHere: (name: string) => `${name}: here`, setNot: (name: string) => `${name}: not here`, strike: 'Strike out', struck: (name: string) => `${name} struck out`, itIsHere: 'It is here', out: 'Not here', wrongCount: 'Give a whole number, from 1.',
  },
  stepStates: { fitted: 'on', tried: 'on for trial', ready: 'ready', waiting: 'waiting' } satisfies Record<StepState, string>,
  paints: { before: 'before paint', after: 'after paint' } satisfies Record<Paint, string>,
  onStep: {
    finalFit: 'final fit', trial: 'trial fit', boxes: (n: number, of: number, on: number) => `Step ${n} of ${of}, ${number(on)} on. All steps`, photo: (moment: string, n: number, of: number) => `${moment} · photo ${n} of ${of}`, beside: (of: string) => `${of}, kept whole`, previousPhoto: 'Photo before', nextPhoto: 'Next photo', noPhoto: 'No photo of it.', openPhoto: 'Open the photo',
    isOn: 'It is on.', isTried: 'It is on for trial.', waits: (n: number) => `${number(n)} in the way`, hardware: 'Hardware, in the order it goes on', noHardware: 'none recorded', joint: (name: string, bag: string) => [name ? `Joint ${name}` : 'Joint', bag ? `bag ${bag}` : ''].filter(Boolean).join(', '), another: 'new', pieceUnnamed: 'piece', openJoint: 'Open the joint', addFigure: 'How tight?', changeFigure: 'Change how tight', lies: 'Where it lies', oldLies: 'Where the old one lies', nowhere: 'nowhere that anybody has said', notes: 'Notes', addNote: 'Note', putNote: 'Put the note down', noteDone: 'Note put down', newPhoto: 'New photo', shoot: 'Take it', photoDone: 'Photo is safe', finger: 'Done, finger-tight', tryIt: 'On for trial', offAgain: 'Off again for finish', notOn: 'It is off after all', more: 'Otherwise',
    tightened: 'Done, tightened', later: 'Later', next: 'Next step', all: 'To Refit', look: 'All steps', looseHere: 'in this assembly',
    said: { tightened: (tag: string) => `${tag} on, tightened`, 'at-height': (tag: string) => `${tag} on; tightened at ride height later`, 'finger-tight': (tag: string) => `${tag} on, finger-tight`, tried: (tag: string) => `${tag} on for trial`, 'off-again': (tag: string) => `${tag} off again for finish`, 'not-on': (tag: string) => `${tag} is off after all` },
    anyway: { title: 'On all the same?', lead: 'By the record this stands in the way. You are at the vehicle: you know best. It stays told.', go: 'On all the same', leave: 'Leave it' },
    keys: { D: 'what the button marked D says', F: 'finger-tight', L: 'later', '← →': 'photos', 'N P': 'step after, before', Z: 'undo', '?': 'keys' } as const, keysTitle: 'Keys', reference: 'The other side, kept whole',   },
});
