import { describe, expect, it } from 'vitest';
import { contain, cover, losesHalf } from './marks-layer';

describe('a picture in its box', () => {
  it('covers it, or stands in it whole, in the middle', () => {
    expect(cover([390, 180], [400, 300])).toEqual({ left: 0, top: -56.25, width: 390, height: 292.5 });
    expect(contain([390, 180], [400, 300])).toEqual({ left: 75, top: 0, width: 240, height: 180 });
  });

  // Catches: cutting a picture taken upright down to a strip.
  it('stands whole where more than half would be cut away', () => {
    expect(losesHalf([390, 180], [400, 300])).toBe(false);
    expect(losesHalf([390, 180], [300, 400])).toBe(true);
    expect(losesHalf([735, 200], [400, 300])).toBe(true);
    expect(losesHalf([400, 300], [400, 300])).toBe(false);
  });
});
