// A picture out of the live video: what every browser can do.

const QUALITY = 0.92;
const SMALL = 192;

/** The frame shown now, as it is seen: drawn at once, encoded after. */
export function drawFrame(video: HTMLVideoElement): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  canvas.getContext('2d')?.drawImage(video, 0, 0);
  return canvas;
}

/** The canvas as a JPEG. */
export function encode(canvas: HTMLCanvasElement, quality = QUALITY): Promise<Blob> {
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => { if (blob) resolve(blob); else reject(new Error('the picture could not be encoded')); }, 'image/jpeg', quality);
  });
}

/** A small square from the middle, for the strip. */
export async function smallSquare(source: HTMLCanvasElement): Promise<Blob> {
  const side = Math.min(source.width, source.height);
  const canvas = document.createElement('canvas');
  canvas.width = SMALL;
  canvas.height = SMALL;
  canvas.getContext('2d')?.drawImage(source, (source.width - side) / 2, (source.height - side) / 2, side, side, 0, 0, SMALL, SMALL);
  const blob = await encode(canvas, 0.8);
  // Memory is freed now, not at some later collection.
  canvas.width = 0;
  return blob;
}
