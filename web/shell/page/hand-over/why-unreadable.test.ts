import { expect, test } from 'vitest';
import { CallFailed } from '../../bridge/line';
import { handOver } from '../words/hand-over';
import { british } from '../words/british';
import { whyUnreadable } from './why-unreadable';

const thrown = (problem: object): Error => new CallFailed({ code: 'not-ours', detail: JSON.stringify(problem) });
const problem = (code: string, why: string, more = {}): object => ({ code, severity: 'error', place: {}, values: { why, ...more }, with: [], hints: ['fetch-again'] });
const say = handOver(british).bring.unreadable;

test.each([
  ['not-ours', 'not-a-zip', 'not-a-zip'], ['not-ours', 'not-a-job-file', 'not-a-job-file'], ['damaged', 'wrapping', 'damaged'], ['damaged', 'too-large', 'damaged'],
])('%s, %s is told as %s, in words alone', (code, why, told) => {
  const said = whyUnreadable(thrown(problem(code, why)));
  expect(said).toEqual({ why: told, detail: '' });
  expect(Object.values(say(said)).join(' ')).not.toMatch(/[{}"]|not-ours|wrapping/);
});

test('what the system said of a file that it does not give helps', () => {
  const said = whyUnreadable(thrown(problem('damaged', 'outside', { detail: 'permission denied' })));
  expect(said).toEqual({ why: 'outside', detail: 'permission denied' });
  expect(say(said).todo).toContain('permission denied');
});

test('any other failure keeps its words; JSON of another kind is left out', () => {
  expect(whyUnreadable(new Error('no memory'))).toEqual({ why: 'other', detail: 'no memory' });
  expect(whyUnreadable(new CallFailed({ code: 'read-failed', detail: 'no memory' }))).toEqual({ why: 'other', detail: 'no memory' });
  expect(whyUnreadable(new CallFailed({ code: 'read-failed', detail: '{"a":1}' }))).toEqual({ why: 'other', detail: '' });
});

test('each says what happened, what is safe and what to do', () => {
  for (const why of ['not-a-zip', 'not-a-job-file', 'damaged', 'outside', 'other'] as const) {
    expect(Object.values(say({ why, detail: '' })).every((sentence) => sentence.length > 10)).toBe(true);
  }
});
