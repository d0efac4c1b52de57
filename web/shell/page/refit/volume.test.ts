import { afterEach, expect, test } from 'vitest';
import { setSpeech } from '../words';
import { readVolume, volumeTyped, volumeWords } from './volume.ts';

afterEach(() => { setSpeech('british'); });

test('an amount is read in the unit shown, or in its own', () => {
  for (const [text, millilitres] of [['4.5', 4500], ['4,5 L', 4500], ['500 ml', 500], ['250cc', 250], ['1 gal', 4546], ['8 pt', 4546], ['0', 0]] as const) expect(readVolume(text, 'metric'), text).toBe(millilitres);
  expect(readVolume('8', 'inch')).toBe(4546);
});

test('an American pint is smaller', () => {
  setSpeech('american');
  expect(readVolume('1 pt', 'metric')).toBe(473);
  expect(readVolume('4', 'inch')).toBe(3785);
  expect(volumeWords(3785, 'inch')).toBe('4\u00a0qt');
});

test('what is no amount is not taken for one', () => {
  for (const text of ['', 'full', '-1', '4.5 kg', '2000 L', '1e3']) expect(readVolume(text, 'metric'), text).toBeNull();
});

test('an amount comes back as it was typed', () => {
  for (const text of ['4.5 L', '0.25 L', '13 L']) expect(volumeTyped(readVolume(text, 'metric') ?? -1, 'metric')).toBe(text);
  expect(volumeWords(250, 'metric')).toBe('250\u00a0ml');
});
