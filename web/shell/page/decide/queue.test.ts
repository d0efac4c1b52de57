import { expect, test, vi } from 'vitest';
import type { UndecidedPart, UndecidedView } from '../../bridge/protocol';

type Ranking = { view: 'undecided' } & UndecidedView;

let answer: ((view: Ranking) => void) | undefined;
let changed: (() => void) | undefined;
vi.mock('../../bridge/desk', () => ({
  desk: {
    addEventListener: (_: string, then: () => void) => { changed = then; },
    removeEventListener: () => undefined,
    weigh: () => new Promise<Ranking>((resolve) => { answer = resolve; }),
  },
}));
vi.useFakeTimers();

const { Queue } = await import('./queue.ts');

const host = { addController: () => undefined, removeController: () => undefined, requestUpdate: vi.fn(), updateComplete: Promise.resolve(true) };
const open = (...ids: string[]): Ranking => ({ view: 'undecided', currency: 'GBP', draws: 1, seed: 1, parts: ids.map((part): UndecidedPart => ({ part, name: part, standing: 'judged', quotes: 1, regret: { minor: 0, currency: 'GBP' }, cash: { minor: 0, currency: 'GBP' } })) });

async function ranked(...ids: string[]): Promise<InstanceType<typeof Queue>> {
  const queue = new Queue(host);
  queue.hostConnected();
  await answers(open(...ids));
  return queue;
}

async function answers(view: Ranking): Promise<void> {
  answer?.(view);
  await vi.advanceTimersByTimeAsync(0);
}

const names = (queue: InstanceType<typeof Queue>): string[] => queue.parts.map(({ part }) => part);

test('whoever was decided is gone before the ranking is worked out again', async () => {
  const queue = await ranked('a', 'b', 'c');
  expect(queue.decided(['b'])?.part).toBe('c');
  expect(queue.decided(['c'])?.part).toBe('a');
  expect(names(queue)).toEqual(['a']);
  expect(queue.decided(['a'])).toBeUndefined();
  expect(names(queue)).toEqual([]);
});

test('what is decided together is not led to', async () => {
  const queue = await ranked('a', 'left', 'right', 'd');
  expect(queue.decided(['left', 'right'])?.part).toBe('d');
  expect(names(queue)).toEqual(['a', 'd']);
});

test('an answer to what was asked before does not bring it back, a later one may', async () => {
  const queue = await ranked('a', 'b');
  changed?.();
  await vi.advanceTimersByTimeAsync(1000);
  queue.decided(['a']);
  await answers(open('a', 'b'));
  expect(names(queue)).toEqual(['b']);
  changed?.();
  await vi.advanceTimersByTimeAsync(1000);
  await answers(open('a', 'b'));
  expect(names(queue)).toEqual(['a', 'b']);
});

test('a decision that is taken back is there again', async () => {
  const queue = await ranked('a', 'b');
  queue.decided(['a']);
  queue.reopened();
  expect(names(queue)).toEqual(['a', 'b']);
});
