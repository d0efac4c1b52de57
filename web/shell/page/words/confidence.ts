export type Confidence = 'sure' | 'about' | 'wild';
export const CONFIDENCES: readonly Confidence[] = ['sure', 'about', 'wild'];

/** A guess looks like a guess. */
export const confidence = {
  label: 'How sure is the figure?',
  word: { sure: 'sure', about: 'about', wild: 'wild guess' } satisfies Record<Confidence, string>,
  said: (figure: string, how: Confidence) => (how === 'sure' ? figure : `${how === 'about' ? 'about' : 'wild guess'} ${figure}`),
};
