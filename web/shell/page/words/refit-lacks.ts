import type { Lack, LackWhy } from '../../bridge/protocol';
import { count, number } from './format';
import { sides } from './sides';
import type { Vocabulary } from './vocabulary';

type Named = Pick<Lack, 'name' | 'other_name' | 'other_tag' | 'other_side' | 'pieces'>;

const times = (pieces: number | undefined, name: string): string => ((pieces ?? 1) > 1 ? `${number(pieces ?? 1)} × ${name}` : name);
const many = (pieces: number | undefined, one: string, more: (n: string) => string): string => ((pieces ?? 1) > 1 ? more(number(pieces ?? 1)) : one);

/** Two of one name are told apart by tag and side. */
function other({ other_name, other_tag, other_side }: Named, unnamed: string): string {
  const name = [other_tag === undefined ? '' : String(other_tag).padStart(4, '0'), other_name, other_side ? sides[other_side] : ''].filter(Boolean).join(' ');
  return name || unnamed;
}

/** What stands in the way of a part or an assembly: after its name, in the words of the bench. */
export const lacks = (trade: Vocabulary) => ({
  what: {
    undecided: () => 'nobody has decided what happens to it',
    missing: () => 'it is not where it should be',
    'out-for-work': () => trade.outForWork,
    'on-loan': () => 'lent out',
    'to-send': () => `not yet sent to the ${trade.specialist}`,
    'to-repair': () => 'the work on it here is not done',
    'to-finish': () => 'tried, and off for finish',
    'tried-only': () => 'on for trial only, has to come off again',
    'to-order': ({ pieces }) => many(pieces, 'not ordered', (n) => `${n} not ordered`),
    'on-order': ({ pieces }) => many(pieces, 'on order', (n) => `${n} on order`),
    'to-fetch': () => 'still on the donor',
    'to-compare': ({ pieces }) => many(pieces, 'in, not compared with the old one', (n) => `${n} in, not compared with the old ones`),
    wrong: ({ pieces }) => many(pieces, 'what came in is wrong', (n) => `${n} that came in are wrong`),
    hardware: ({ name, pieces }) => `${times(pieces, name || 'new hardware')}, new, not here`,
    consumable: ({ name, pieces }) => `${times(pieces, name || 'something it uses up')} not here`,
    'goes-after': (lack) => `goes on after ${other(lack, 'something else')}, which is not on`,
    paint: () => 'goes on after the paint',
    circle: (lack) => `waits for itself, by way of ${other(lack, 'others')}`,
  } satisfies Record<LackWhy, (lack: Named) => string>,
  own: 'yours to do', from: (day: string) => `from ${day}`, overdue: 'was due, and is not here', noDate: 'no date known',
  wholeAssembly: 'the whole assembly',
  noQuote: 'No route is chosen for it now: choose one under Its routes.', gone: 'That has changed meanwhile: look again.',
   ways: {
    decide: 'Its routes', useAgain: 'Use it again', open: 'Open the part', workDone: 'Work done', finishDone: 'Finish done', offAgain: 'Off again', order: 'It is ordered', inNow: 'In today', fetched: 'Off the donor', right: 'Compared: right', wrong: 'Compared: wrong',
    here: (n: number) => (n === 1 ? 'It is here' : `All ${number(n)} are here`), toOther: (name: string) => `Go to ${name}`, painted: 'It is painted',
  },
  done: {
    useAgain: (name: string) => `${name}: use again`, workDone: (name: string) => `${name}: work done`, finishDone: (name: string) => `${name}: finish done`, inNow: (name: string) => `${name}: in today`, fetched: (name: string) => `${name}: off the donor`,
    right: (name: string) => `${name}: compared, right`, wrong: (name: string) => `${name}: compared, wrong`, here: (name: string) => `${name}: here`, painted: (name: string) => `${name} is painted`,
  },
  more: (n: number) => `and ${count(n, 'more thing', 'more things')}`,
});
