import { expect, test } from 'vitest';
import { british } from './british';
import { kit } from './kit';
import { safeKeeping } from './safe-keeping';

test('the head and the place Safe keeping say the same of the same', () => {
  expect(kit(british).notPromised).toBe(safeKeeping.keptNotPromised.toLowerCase());
});
