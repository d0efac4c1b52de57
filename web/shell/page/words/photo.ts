import { count } from './format';

/** The sheet of one photo. */
export const photo = {
  title: 'Photo',
  of: (n: number, all: number) => `photo ${n} of ${all}`,
  gone: { first: 'This photo is not in the job.', then: 'Its entry may not have been brought in yet.', go: 'To the parts' },
  missing: { happened: 'The picture itself is not on this device.', safe: 'Its entry, its marks and its words are here.', todo: 'Bring in a job file from the device that took it.' },
  waiting: 'The picture is being read.',
  zoomIn: 'Larger', zoomOut: 'Smaller', fit: 'Whole', zoomed: (percent: number) => `${percent} of 100`,
  ring: 'Ring', arrow: 'Arrow', stop: 'Done',
  placeRing: 'Tap the middle of what you mean, or draw from its middle outwards.',
  placeArrow: 'Tap where the tip goes, or draw from the tail to the tip.',
  keys: 'Arrow keys move it, + and − change its size, Enter puts it down, Esc leaves it.',
  put: 'Put it down', larger: 'Larger', smaller: 'Smaller', left: 'Left', right: 'Right', up: 'Up', down: 'Down', turn: 'Turn',
  marks: 'Marks', mark: (n: number, shape: string) => `${n} ${shape}`, ringWord: 'ring', arrowWord: 'arrow', moveMark: 'Move', strikeMark: 'Strike out', none: 'none yet',
  putDone: (shape: string) => `${shape} put down`, struckMark: 'Mark struck out', movedMark: 'Mark moved',
  caption: 'Words under the photo', noCaption: 'no words yet', captionDone: 'Words put down',
  moment: 'Taken when', momentDone: (moment: string) => `Photo is of: ${moment}`,
  shot: 'Taken for', shots: { plain: 'the thing itself', 'index-mark': 'index marks', shims: 'shims', tag: 'tag or bag' },
  order: 'Order', earlier: 'Earlier', later: 'Later', ordered: 'Order changed',
  strike: 'Strike out', struck: 'Photo struck out', bring: 'Bring back', brought: 'Photo brought back', isStruck: 'This photo is struck out.',
  previous: 'Photo before', next: 'Photo after',
  view: 'Picture, can be moved and made larger',
  describe: (marks: number) => (marks ? `with ${count(marks, 'mark')}` : ''),
};
