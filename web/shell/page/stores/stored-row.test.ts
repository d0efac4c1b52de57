import { expect, test, vi } from 'vitest';
import type { StoredLine } from '../../bridge/protocol';

vi.mock('../kit/row', () => ({}));
vi.mock('../parts/part-row', () => ({ partName: () => '' }));

const { belongs, careWords, inPlace, isMissing } = await import('./stored-row');

const stored = (more: Partial<StoredLine> = {}, line: object = {}): StoredLine =>
  ({ line: { id: 'hub', name: 'Hub', standing: 'off', place: ['Garage', 'Box 07'], ...line }, lies: 'place', care: {}, settled: false, awkward: [], ...more }) as unknown as StoredLine;
/** The words, of a template too. */
const text = (said: ReturnType<typeof inPlace>): string => (typeof said === 'string' ? said : said.strings.reduce((all, one, i) => all + one + (said.values[i] === undefined ? '' : String(said.values[i])), '')).replace(/<[^>]*>/g, '').replace(/\u00a0/g, ' ');

// Catches: a part that was put right staying missing for ever, or one that a scan missed not being so.
test('missing is what a count did not find and nobody has settled', () => {
  expect(isMissing(stored())).toBe(false);
  expect(isMissing(stored({ counted: 'missing' }))).toBe(true);
  expect(isMissing(stored({ counted: 'missing', settled: true }))).toBe(false);
  expect(isMissing(stored({ missed: 1 }))).toBe(true);
  expect(isMissing(stored({ counted: 'foreign' }))).toBe(false);
});

test('a place says of a part what was found of it there', () => {
  expect(text(inPlace(stored()))).toBe('here');
  expect(text(inPlace(stored({ counted: 'with-bag' })))).toBe('with its bag');
  expect(text(inPlace(stored({ counted: 'missing' })))).toBe('missing');
  const old = { at: new Date(2020, 9, 2).getTime(), path: ['Garage', 'Box 12'], elsewhere: true };
  expect(text(inPlace(stored({ missed: 1, seen: old } as unknown as Partial<StoredLine>)))).toBe('missing, seen in Box 12, 2 Oct 2020');
  expect(text(inPlace(stored({ missed: 1, seen: { ...old, elsewhere: false } } as unknown as Partial<StoredLine>)))).toBe('missing, seen here 2 Oct 2020');
});

// Catches: the old one thrown away, because nothing says that it is kept to compare with.
test('where another goes on in its place, the old one is kept as pattern until that is on', () => {
  expect(text(inPlace(stored({}, { route: 'buy', standing: 'order' })))).toBe('here, kept as pattern');
  expect(text(inPlace(stored({}, { route: 'donor', standing: 'refitted' })))).toBe('here, the old one, another is on');
  expect(text(inPlace(stored({}, { route: 'repair-here', standing: 'decided' })))).toBe('here');
});

test('a foreign part says where it belongs', () => {
  expect(belongs(stored())).toBe('foreign, belongs in Box 07');
  expect(belongs(stored({ lies: 'nowhere' }))).toBe('foreign, nowhere by the record');
  expect(text(inPlace(stored({ counted: 'foreign' })))).toBe('foreign, belongs in Box 07');
  expect(text(inPlace(stored({ counted: 'foreign', settled: true })))).toBe('here');
});

test('how it is kept', () => {
  expect(careWords({ oiled: true, wrapped: true, fragile: false })).toEqual(['oiled and wrapped']);
  expect(careWords({ oiled: true, wrapped: false, fragile: true, lift: 'two' })).toEqual(['oiled', 'fragile', 'two to lift']);
  expect(careWords({ oiled: false, wrapped: false, fragile: false, lift: 'alone' })).toEqual([]);
});
