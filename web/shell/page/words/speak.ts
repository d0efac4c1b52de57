import { KEEP } from './format';

/** Spoken notes. */
export const speak = {
  hold: 'Hold to speak',
  starting: 'Wait…',
  speaking: (time: string) => `Speak now,${KEEP}${time}`,
  started: 'Recording. What is said is stored as it comes.',
  stored: 'Spoken note stored.',
  safe: 'stored as it comes',
  refused: 'No microphone: allowed in the browser’s settings',
  none: 'No microphone here',
};
