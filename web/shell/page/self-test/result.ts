import type { selfTest } from '../words/self-test';

export type TestName = keyof typeof selfTest.names;

/** What came of one test: works, does not, or cannot be told; and in which words. */
export interface Result { name: TestName; works: boolean | null; said: string }
