/** When a photo was taken; set by where the user is in the flow. */
export const moments = {
  word: { before: 'before', off: 'off', after: 'after' },
};
