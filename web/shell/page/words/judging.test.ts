import { afterEach, describe, expect, test } from 'vitest';
import type { CheckWords } from './checks';
import { setSpeech, words } from './index';

afterEach(() => { setSpeech('british'); });

const checks: [string, CheckWords][] = Object.entries(words().checks);

// That each code has its words is kept by the compiler: the tables of the core are generated into the protocol.
describe('what is asked', () => {
  test('is a question each', () => {
    for (const [code, { ask }] of checks) expect(ask, code).toMatch(/^[A-Z][^?]+\?$/);
  });

  test('is answered in one to four words, each answer with its own', () => {
    for (const [code, { outcomes }] of checks) {
      const said = Object.values(outcomes);
      for (const one of said) expect(one.split(' ').length, `${code}: ${one}`).toBeLessThanOrEqual(4);
      expect(new Set(said).size, code).toBe(said.length);
    }
  });
});

// ISO 4628-3, as a published table that sets it beside other scales restates it: Ri 0 to 5 are 0, 0.05, 0.5, 1, 8, 40 to 50 per cent.
test('the degrees of rusting carry their share of the surface', () => {
  expect(words().checks.coating.looksLike).toEqual({ ri0: '0 %', ri1: '0.05 %', ri2: '0.5 %', ri3: '1 %', ri4: '8 %', ri5: '40 to 50 %' });
});

describe('cautions', () => {
  test('fit in one line of a phone', () => {
    for (const speech of ['british', 'american'] as const) {
      setSpeech(speech);
      for (const [hazard, { name }] of Object.entries(words().cautions.hazard)) expect(name.length, hazard).toBeLessThanOrEqual(22);
    }
  });

  test('name a source, or say that there is none', () => {
    for (const [hazard, { source }] of Object.entries(words().cautions.hazard)) expect(source, hazard).toMatch(/CFR|HSE|no source/);
  });

  test('show both sides of what is contested', () => {
    const { line, can, source } = words().cautions.hazard['burnt-rubber'];
    expect([line, source].every((text) => /contested/i.test(text))).toBe(true);
    expect(can).toMatch(/manuals warn.*HSE says/s);
  });

  test('say what the app does not replace', () => {
    for (const one of ['manual', 'inspector', 'codes', 'licensed shop']) expect(words().cautions.standing).toContain(one);
  });
});

// What a command would not have been allowed to do may stand after two job files came together: then nothing was refused.
test('a problem that stands is not told as one that was refused', () => {
  for (const code of ['not-an-answer', 'limit-crossed', 'out-of-bounds', 'missing'] as const) {
    const told = (severity: 'error' | 'warning'): string => words().problems.safe({ code, severity, place: {}, values: {}, hints: [] });
    expect(told('error')).toBe('Nothing was changed.');
    expect(told('warning'), code).not.toBe('Nothing was changed.');
  }
});

test('families follow the trade words', () => {
  expect(words().families['brake-disc'].name).toBe('Brake disc');
  setSpeech('american');
  expect(words().families['brake-disc'].name).toBe('Brake rotor');
  expect(words().families['locking-piece'].name).toBe('Cotter pin, snap ring, lock washer');
});
