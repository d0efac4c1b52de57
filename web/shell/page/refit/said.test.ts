import { afterEach, expect, test } from 'vitest';
import type { Lack, LackWhy, RefitAssembly } from '../../bridge/protocol';
import { setSpeech, words } from '../words';
import { standOf, standWords } from './assembly-row';
import { dayWords, lackWhen } from './when';

afterEach(() => { setSpeech('british'); });

const year = new Date().getFullYear();
const lack = (more: Partial<Lack> & Pick<Lack, 'why'>): Lack => ({ name: 'Seal', own: false, no_date: false, overdue: false, ...more });
const line = (lacks: Lack[], more: Partial<RefitAssembly> = {}): RefitAssembly => ({ id: 'a', name: 'Front hub', state: lacks.length ? 'blocked' : 'ready', parts: 3, fitted: 0, tried: 0, lacks, no_date: false, own: false, minutes: 30, starting: true, nowhere: 0, ...more });
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test('what blocks an assembly is counted, with the first day on which nothing does', () => {
  const two = [lack({ why: 'on-order', day: `${year}-03-15` }), lack({ why: 'on-order', day: `${year}-03-11` })];
  expect(plain(standWords(line(two, { earliest: `${year}-03-15` })))).toBe('blocked by 2, earliest 15 Mar');
  expect(standWords(line([lack({ why: 'wrong', no_date: true }), ...two.slice(1)], { no_date: true }))).toBe('blocked by 2, no date known');
});

test('what waits for nobody else is the person’s own to do', () => {
  const own = line([lack({ why: 'to-repair', own: true })], { own: true });
  expect([standOf(own), plain(standWords(own))]).toEqual(['own', '1 thing of yours to do']);
  // To decide begins a wait that nobody knows yet.
  const open = line([lack({ why: 'undecided', own: true, no_date: true })], { no_date: true });
  expect([standOf(open), plain(standWords(open))]).toEqual(['own', '1 thing of yours to do, no date known']);
  expect(standOf(line([lack({ why: 'to-repair', own: true }), lack({ why: 'on-order' })]))).toBe('blocked');
});

test('when a lack is over, as far as anybody knows', () => {
  expect(plain(lackWhen(lack({ why: 'on-order', day: `${year}-03-15` })))).toBe('from 15 Mar');
  expect(lackWhen(lack({ why: 'on-order', overdue: true, no_date: true }))).toBe('was due, and is not here');
  expect(lackWhen(lack({ why: 'missing', no_date: true }))).toBe('no date known');
  expect(lackWhen(lack({ why: 'to-compare', own: true, day: `${year}-03-02` }))).toBe('yours to do');
});

test('a day of another year says which', () => {
  expect(plain(dayWords('1999-03-15', new Date('2026-01-01T12:00')))).toBe('15 Mar 1999');
  expect(plain(dayWords('2026-03-15', new Date('2026-01-01T12:00')))).toBe('15 Mar');
});

test('every lack has words, in both vocabularies', () => {
  for (const speech of ['british', 'american'] as const) {
    setSpeech(speech);
    const what: Record<LackWhy, (lack: Pick<Lack, 'name' | 'other_name' | 'pieces'>) => string> = words().refit.lacks.what;
    for (const say of Object.values(what)) {
      for (const pieces of [undefined, 1, 2]) expect(say({ name: '', other_name: '', ...(pieces !== undefined && { pieces }) })).toMatch(/\p{L}{2}/u);
    }
  }
  expect(words().refit.lacks.what['to-send']()).toContain('outside shop');
});
