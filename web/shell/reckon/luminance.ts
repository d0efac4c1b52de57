/** One byte a pixel, out of that or out of RGBA: as bright as an eye sees it, in whole numbers. */
export function luminance(pixels: Uint8Array, count: number): Uint8Array {
  if (pixels.length !== 4 * count) return pixels;
  const luma = new Uint8Array(count);
  for (let at = 0, from = 0; at < count; at++, from += 4) {
    luma[at] = ((pixels[from] ?? 0) * 77 + (pixels[from + 1] ?? 0) * 150 + (pixels[from + 2] ?? 0) * 29) >> 8;
  }
  return luma;
}
