import { describe, expect, it } from 'vitest';
import { backOf, openedFrom } from './back-of';
import { addressOf } from './places';

describe('the way back', () => {
  it('leads to where the page was opened from', () => {
    for (const from of ['#/refit/aa01?step=bb02', '#/refit/fluids', '#/part/cc03', '#/stores', '#/stores/dd04', '#/missing/out']) {
      expect(backOf(addressOf(openedFrom('#/photo/ee05', from)), '#/parts')).toBe(from);
    }
    expect(backOf(addressOf(openedFrom('#/scan?mode=open', '#/where')), '#/stores')).toBe('#/where');
    expect(addressOf(openedFrom('#/scan?mode=open', '#/where')).search.get('mode')).toBe('open');
  });

  it('leads where it always does without that', () => {
    expect(backOf(addressOf('#/photo/ee05'), '#/parts')).toBe('#/parts');
    expect(backOf(undefined, '#/parts')).toBe('#/parts');
  });

  // Catches: following whatever stands in an address that somebody sent.
  it('follows nothing that it does not know', () => {
    for (const from of ['hand-over', 'javascript:alert(1)', '//elsewhere.example', 'refit/a/b', 'refit/a?step=b&from=c', 'stores/../settings', '']) {
      expect(backOf({ search: new URLSearchParams({ from }) }, '#/parts'), from).toBe('#/parts');
    }
  });
});
