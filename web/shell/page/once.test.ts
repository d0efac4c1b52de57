import { expect, test, vi } from 'vitest';
import { Once } from './once.ts';

const soon = (answer: boolean): (() => Promise<boolean>) => () => Promise.resolve(answer);

// Break: leave `busy` out.
test('a second tap while the first is under way does nothing', async () => {
  const once = new Once();
  const work = vi.fn(soon(true));
  await Promise.all([once.run('a', undefined, work), once.run('a', undefined, work), once.run('b', undefined, work)]);
  expect(work).toHaveBeenCalledTimes(2);
  // A form may be filled in once more.
  await once.run('a', undefined, work);
  expect(work).toHaveBeenCalledTimes(3);
});

// Break: leave `done` out.
test('stored, it waits until the screen has changed', async () => {
  const once = new Once();
  const work = vi.fn(soon(true));
  const [before, after] = [{}, {}];
  await once.run('a', before, work);
  await once.run('a', before, work);
  expect(work).toHaveBeenCalledTimes(1);
  await once.run('a', after, work);
  expect(work).toHaveBeenCalledTimes(2);
});

// Break: count what was not stored as done.
test('what was not stored, or went wrong, may be tried again', async () => {
  const once = new Once();
  const shown = {};
  const work = vi.fn(soon(false));
  await once.run('a', shown, work);
  await once.run('a', shown, work);
  expect(work).toHaveBeenCalledTimes(2);
  await expect(once.run('a', shown, () => Promise.reject(new Error('gone')))).rejects.toThrow('gone');
  await once.run('a', shown, work);
  expect(work).toHaveBeenCalledTimes(3);
});
