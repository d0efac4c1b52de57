import { afterEach, expect, test } from 'vitest';
import { american } from './american';
import { british } from './british';
import { setSpeech, words } from './index';

afterEach(() => { setSpeech('british'); });

test('American words replace British ones everywhere at once', () => {
  expect(words().places.stores).toBe('Stores');
  setSpeech('american');
  expect(words().places.stores).toBe('Storage');
  expect(words().standings.out).toBe('sent out');
  expect(words().kit.tagName('0147', 'out', { missing: true })).toBe('tag 0147, sent out, missing');
});

test('the American file holds only what differs', () => {
  for (const [name, word] of Object.entries(american)) expect(british).not.toMatchObject({ [name]: word });
});
