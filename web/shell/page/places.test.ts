import { expect, test } from 'vitest';
import { addressOf, places } from './places.ts';

test.each([
  ['', 'first', null], ['#', 'first', null], ['#/', 'first', null], ['#/teardown', 'teardown', null],
  ['#/part/0a1b', 'part', '0a1b'], ['#/parts?find=hub', 'parts', null], ['#/joint/x?y=1', 'joint', 'x'], ['#/part/50%', 'part', '50%'],
])('reads %s', (hash, place, id) => {
  expect(addressOf(hash)).toMatchObject({ place, id });
});

test('what is asked for comes along', () => {
  expect(addressOf('#/parts?find=hub%20cap').search.get('find')).toBe('hub cap');
});

test('the first screen and bringing in work with no job open', () => {
  expect(places['first']?.withoutJob).toBe(true);
});
