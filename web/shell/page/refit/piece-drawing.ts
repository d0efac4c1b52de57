import { svg } from 'lit';

/** What a piece of hardware is drawn as. */
export type PieceShape = 'castle-nut' | 'lock-nut' | 'nut' | 'bolt' | 'screw' | 'stud' | 'split-pin' | 'pin' | 'circlip' | 'spring-washer' | 'tab-washer' | 'washer' | 'shim' | 'spacer' | 'seal' | 'gasket' | 'bearing' | 'key' | 'spring' | 'plate';

/** The first row of which every word stands in the name decides. Whole words, so that a "pin" is not found in "pinion". */
const BY_NAME: readonly (readonly [PieceShape, ...string[]])[] = [
  ['pin', 'king', 'pin'], ['split-pin', 'split', 'pin'], ['split-pin', 'cotter', 'pin'], ['circlip', 'circlip'], ['circlip', 'snap', 'ring'], ['castle-nut', 'castle', 'nut'], ['castle-nut', 'castellated'], ['castle-nut', 'slotted', 'nut'], ['lock-nut', 'lock', 'nut'], ['lock-nut', 'locknut'], ['lock-nut', 'locking', 'nut'], ['lock-nut', 'nylon', 'nut'], ['nut', 'nut'],
  ['spring-washer', 'spring', 'washer'], ['spring-washer', 'split', 'washer'], ['tab-washer', 'tab', 'washer'], ['tab-washer', 'lock', 'washer'], ['tab-washer', 'locking', 'washer'], ['tab-washer', 'thrust', 'washer'], ['tab-washer', 'lock', 'plate'], ['tab-washer', 'locking', 'plate'], ['washer', 'washer'], ['shim', 'shim'],
  ['stud', 'stud'], ['screw', 'screw'], ['screw', 'setscrew'], ['bolt', 'bolt'], ['spacer', 'spacer'], ['spacer', 'sleeve'], ['spacer', 'bush'], ['gasket', 'gasket'], ['seal', 'seal'], ['seal', 'o', 'ring'], ['seal', 'oring'], ['bearing', 'bearing'], ['key', 'key'], ['spring', 'spring'], ['pin', 'pin'], ['pin', 'cotter'], ['pin', 'dowel'],
];

/** What a piece of this name is drawn as; a plate with a hole where the name says nothing. */
export function pieceShape(name: string): PieceShape {
  const words = name.toLowerCase().split(/[^\p{L}\p{N}]+/u).map((word) => (word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word));
  return BY_NAME.find(([, ...wanted]) => wanted.every((word) => words.includes(word)))?.[0] ?? 'plate';
}

const HEXAGON = 'M18 6H46L60 32L46 58H18L4 32Z';

/** On 64 × 64, as seen along the bolt, or from the side where that tells more. Fill and line come with the class. */
export const pieceDrawings = {
  nut: svg`<path d=${HEXAGON} /><circle cx="32" cy="32" r="14" /><path class="thin" d="M32 14A18 18 0 0 1 50 32" />`,
  'castle-nut': svg`<path d=${HEXAGON} /><circle cx="32" cy="32" r="20" /><circle cx="32" cy="32" r="12" /><path class="slot" d="M32 12V20M32 44V52M14.7 22L21.6 26M42.4 38L49.3 42M14.7 42L21.6 38M42.4 26L49.3 22" />`,
  'lock-nut': svg`<path d=${HEXAGON} /><circle cx="32" cy="32" r="21" stroke-dasharray="5 3" /><circle cx="32" cy="32" r="13" />`,
  bolt: svg`<path d="M6 18H20V46H6ZM20 24H58V40H20Z" /><path class="thin" d="M6 27H20M6 37H20M40 24L37 40M46 24L43 40M52 24L49 40M58 24L55 40" />`,
  screw: svg`<path d="M20 16C12 18 6 24 6 32S12 46 20 48ZM20 25H58V39H20Z" /><path class="thin" d="M6 32H15M34 25L31 39M40 25L37 39M46 25L43 39M52 25L49 39" />`,
  stud: svg`<path d="M4 24H60V40H4Z" /><path class="thin" d="M10 24L7 40M16 24L13 40M22 24L19 40M44 24L41 40M50 24L47 40M56 24L53 40" />`,
  'split-pin': svg`<path class="wire" d="M62 38H28C22 38 20 42 14 42A10 10 0 0 1 14 22C20 22 22 26 28 26H54" />`,
  pin: svg`<path d="M6 24H54L60 28V36L54 40H6Z" />`,
  circlip: svg`<path class="wire" d="M25 57A26 26 0 1 1 39 57" /><circle cx="22" cy="54" r="4.4" /><circle cx="42" cy="54" r="4.4" />`,
  washer: svg`<circle cx="32" cy="32" r="27" /><circle cx="32" cy="32" r="13" />`,
  shim: svg`<circle cx="32" cy="32" r="27" /><circle cx="32" cy="32" r="20" /><circle class="thin" cx="32" cy="32" r="23.5" />`,
  'spring-washer': svg`<path d="M30 5A27 27 0 1 0 44 8L39 20A14 14 0 1 1 31 18Z" />`,
  'tab-washer': svg`<circle cx="32" cy="32" r="27" /><circle cx="32" cy="32" r="13" /><path d="M43 27.5H54V36.5H43" />`,
  spacer: svg`<path d="M12 12H52V52H12Z" /><path class="thin" d="M22 12V52M42 12V52" stroke-dasharray="5 3" />`,
  seal: svg`<circle cx="32" cy="32" r="27" /><circle cx="32" cy="32" r="17" /><path class="thin" d="M9 21L19 9M6 33L33 6M10 45L18 36M36 18L45 9M47 28L56 19M19 55L28 47M31 58L57 32M45 55L55 45" />`,
  gasket: svg`<path d="M14 6H50L60 20V44L50 58H14L4 44V20Z" /><circle cx="32" cy="32" r="14" /><circle cx="15" cy="18" r="3.4" /><circle cx="49" cy="18" r="3.4" /><circle cx="15" cy="46" r="3.4" /><circle cx="49" cy="46" r="3.4" />`,
  bearing: svg`<circle cx="32" cy="32" r="28" /><circle cx="32" cy="32" r="12" /><circle cx="32" cy="12" r="5.4" /><circle cx="49.3" cy="22" r="5.4" /><circle cx="49.3" cy="42" r="5.4" /><circle cx="32" cy="52" r="5.4" /><circle cx="14.7" cy="42" r="5.4" /><circle cx="14.7" cy="22" r="5.4" />`,
  key: svg`<path d="M6 22H58A26 26 0 0 1 6 22Z" />`,
  spring: svg`<path class="wire" d="M8 50L14 14L22 50L30 14L38 50L46 14L54 50" />`,
  plate: svg`<path d="M8 14H56V50H8Z" /><circle cx="32" cy="32" r="9" />`,
} as const;
