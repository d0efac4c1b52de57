import { expect, test } from 'vitest';
import { asTyped, figures } from './amount';

// In a field a comma is a decimal point: 1,250 would come back as one and a quarter.
test('what stands in a field is read as what it was', () => {
  expect(figures(1_250_000_000, 'length', 'metric')).toBe('1,250');
  expect(asTyped(1_250_000_000, 'length', 'metric')).toBe('1250');
  expect(asTyped(31_762_730, 'length', 'metric')).toBe('31.76273');
  expect(asTyped(-50_800, 'length', 'metric')).toBe('-0.0508');
  expect(asTyped(31_762_700, 'length', 'inch')).toBe('1.2505');
  expect(asTyped(1_250_500, 'force', 'metric')).toBe('1250.5');
  expect(asTyped(444_822, 'force', 'inch')).toBe('100');
  expect(asTyped(1_200, 'number', 'metric')).toBe('1200');
  expect(asTyped(0, 'length', 'metric')).toBe('0');
});
