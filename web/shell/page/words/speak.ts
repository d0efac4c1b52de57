/** Spoken notes. */
export const speak = {
  hold: 'Hold to speak',
  starting: 'Wait…',
  speaking: (time: string) => `Speak ${time}`,
  started: 'Recording. What is said is stored as it comes.',
  stored: 'Spoken note stored.',
  refused: 'No microphone: allowed in the browser’s settings',
  none: 'No microphone here',
};
