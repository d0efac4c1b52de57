import { count, number } from './format';
import type { Vocabulary } from './vocabulary';

/** Where things lie. */
export const stores = (trade: Vocabulary) => ({
  title: trade.stores,
  second: (places: number, nowhere: number) => [count(places, 'place'), nowhere ? `${count(nowhere, 'part')} nowhere` : ''].filter(Boolean).join(', '),
  kinds: { area: 'area', rack: 'rack', shelf: 'shelf', box: 'box', bag: 'bag', hook: 'hook', floor: 'floor' },
  kind: 'Kind',
  noName: 'no name yet',
  make: 'New place', makeIn: (name: string) => `New place in ${name}`, name: 'Name', made: (name: string) => `${name} made`, needsName: 'Give it a name, like Box 07.',
  rename: 'Rename', renamed: (name: string) => `Renamed to ${name}`,
  move: 'Move', moveTitle: (name: string) => `Move ${name}`, moved: (name: string, to: string) => `${name} moved to ${to}`, top: 'Not inside another', outermost: 'outermost',
  strike: 'Strike out', struck: (name: string) => `${name} struck out`, strikeLead: (n: number) => (n ? `${count(n, 'part')} would still be said to lie here. Move them first, or bring the place back later.` : 'Nothing lies here.'),
  bring: 'Bring back', brought: (name: string) => `${name} brought back`, isStruck: 'This place is struck out.',
  parts: (n: number) => count(n, 'part'), here: (right: number, within: number) => (right === within ? number(within) : `${number(right)} of ${number(within)}`),
  inside: 'Places inside', lying: 'Parts here', nothing: 'Nothing lies here yet.', allParts: 'All parts here and inside, as a list',
  nowhere: 'Lies nowhere yet', nowhereLead: 'Parts that nobody has said a place for.',
  none: { first: 'Say where things will lie.', then: 'Make the first place: the garage, a rack, a box. Places hold places; a part is put in one with a tap.' },
  gone: { first: 'This place is not in the job.', then: 'It may not have been brought in yet.', go: `To ${trade.stores}` },
  choose: 'Choose a place', newHere: 'New place, put it there', findPlace: 'Find a place', noneFound: 'No place is called that.',
  path: (names: readonly string[]) => names.join(' · '),
  conflictMoved: 'Part moved',
});
