/** A code is taken anew only once it was out of sight for so long. */
export const OUT_OF_SIGHT_MS = 2_000;

/** Tells codes that come into sight from those that stay there: what lies before the camera is read many times a second. */
export class SeenAgain {
  private readonly last = new Map<string, number>();

  /** Of the codes in a frame those that have just come into sight. */
  fresh(codes: readonly string[], now: number): string[] {
    const fresh = codes.filter((code) => now - (this.last.get(code) ?? -Infinity) > OUT_OF_SIGHT_MS);
    for (const code of codes) this.last.set(code, now);
    return fresh;
  }
}
