import { count, number } from './format';

/** Reading tags with the camera, or typing their codes. */
export const scan = {
  title: 'Scan', modes: { open: 'Open', move: 'Move', count: 'Count' }, mode: 'What a tag does',
  second: { open: 'A tag opens its part or place', move: 'Part by part, then the place', count: 'Every tag in one place' },
  torch: 'Torch', torchName: 'Torch of the camera',
  ready: { open: 'Hold a tag in the frame', openTyped: 'Type what stands on a tag', move: 'First the part, then where it goes', countPlace: 'First the tag of the place', count: 'Now every tag that lies here' },
  type: 'Type the code', camera: 'Back to the camera', code: 'Code on the tag', codeHint: 'The figures and the character after them', codeLike: '0147-X', take: 'Take it', rub: 'Rub out', keys: 'Keys for the code',
  undo: 'Take back', undoName: 'Take back the last', undoneName: (what: string) => `Taken back: ${what}`,
  saving: 'saving', failed: 'not stored',
  wrongCheck: 'Not a right code', wrongCheckTodo: 'One character is wrong or two are swapped. Look again.',
  notOurs: 'Not one of our tags', notOursTodo: 'A tag holds figures and one character after them.',
  unsure: (name: string) => `Is it ${name}?`, unsureTodo: 'Typed without the character after the figures: a slip would go unnoticed.', yes: 'Yes, that one',
  unknown: (code: string) => `Nothing carries ${code} yet`, unknownTodo: 'What is it on?',
  newPart: 'New part', newPlace: 'New place', giveTo: 'Give it to …', giveTitle: (code: string) => `Tag ${code} goes on`, giveFind: 'Find the part', gaveTo: (code: string, name: string) => `${name} carries ${code} now`,
  newPartMade: (code: string) => `New part ${code}`, newPlaceMade: (name: string) => `${name} made`, newPlaceName: (code: string) => `Box ${code}`,
  both: (code: string) => `Two carry ${code}`, bothTodo: 'Which one is it? Then give the other a new tag.',
  opening: (name: string) => `Opening ${name}`,
  taken: (name: string) => `${name} in hand`, inHand: (n: number) => `${number(n)} in hand`, inHandAgain: (name: string) => `${name} is in hand already`, inHandLabel: 'In hand', putDown: 'Put all down', putDownDone: 'Nothing in hand',
  nowPlace: 'Now the place', moved: (what: string, place: string) => `${what} laid in ${place}`, movedMany: (n: number, place: string) => `${count(n, 'thing')} laid in ${place}`,
  intoItself: (name: string) => `${name} cannot go into itself`, intoItselfTodo: 'Scan another place.',
  countBegun: (name: string) => `Counting ${name}`, countOn: (name: string) => `Going on with ${name}`, isCounting: (name: string) => name, needPlace: 'That is a part. First the tag of the place.',
  here: 'here', withBag: 'here, with what is in it', foreign: (place: string) => (place ? `foreign, belongs in ${place}` : 'foreign, lies nowhere by the record'), foreignBox: 'a place that does not belong here', again: 'counted already',
  progress: (seen: number, of: number) => `${number(seen)} of ${number(of)}`, progressLabel: 'Seen so far', foreignCount: (n: number) => `${number(n)} foreign`, toSee: 'Not seen yet', toSeeNone: 'All that should be here was seen.', end: 'End the count', endCost: (n: number) => (n ? `${number(n)} not seen` : 'all seen'),
  ended: (name: string) => `${name} counted`,
  thePlace: (name: string, parts: number) => `${name}, ${count(parts, 'part')}`,
  noName: 'no name yet', noCamera: 'Type the codes instead.', refused: 'Type the codes, or allow it in the browser’s settings for this page.',
};
