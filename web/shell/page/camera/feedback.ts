// What is heard and felt when a tag was read: with gloves on nobody looks at the screen first.

export type Heard = 'taken' | 'amiss' | 'wrong';

const TONES: Record<Heard, readonly (readonly [hertz: number, from: number, lasts: number])[]> = {
  taken: [[1320, 0, 0.09]],
  amiss: [[660, 0, 0.12], [660, 0.18, 0.12]],
  wrong: [[220, 0, 0.3]],
};
const BUZZES: Record<Heard, number[]> = { taken: [25], amiss: [40, 60, 40], wrong: [160] };
const LOUD = 0.25;

/** Short tones and buzzes, where the device has them. Silent until the person has touched the page. */
export class Feedback {
  private sound: AudioContext | null = null;

  give(heard: Heard): void {
    if (navigator.userActivation?.hasBeenActive === false) return;
    navigator.vibrate?.(BUZZES[heard]);
    try {
      this.sound ??= new AudioContext();
      void this.sound.resume().catch(() => undefined);
      for (const [hertz, from, lasts] of TONES[heard]) tone(this.sound, hertz, from, lasts);
    } catch {
      // No sound here: the sign on the screen says it.
    }
  }

  close(): void {
    void this.sound?.close().catch(() => undefined);
    this.sound = null;
  }
}

function tone(sound: AudioContext, hertz: number, from: number, lasts: number): void {
  const [pitch, loudness] = [sound.createOscillator(), sound.createGain()];
  const start = sound.currentTime + from;
  pitch.frequency.value = hertz;
  loudness.gain.setValueAtTime(LOUD, start);
  // A tone that is cut off clicks.
  loudness.gain.linearRampToValueAtTime(0, start + lasts);
  pitch.connect(loudness).connect(sound.destination);
  pitch.start(start);
  pitch.stop(start + lasts);
}
