import type { Aim } from '../../bridge/protocol';

/** How original it must be, the least first. */
export const AIMS: readonly Aim[] = ['hard-use', 'regular-road-use', 'conserve', 'show-standard'];
