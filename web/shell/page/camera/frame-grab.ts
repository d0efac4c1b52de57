// A picture out of the live video: what every browser can do.

const QUALITY = 0.92;
const SMALL = 192;

/** The whole frame shown now. It takes a moment: only where no still is to be had. */
export function drawFrame(video: HTMLVideoElement): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  canvas.getContext('2d')?.drawImage(video, 0, 0);
  return canvas;
}

/** A small square from the middle of the frame shown now, for the strip. */
export function drawSmall(video: HTMLVideoElement): HTMLCanvasElement {
  const { videoWidth: width, videoHeight: height } = video;
  const side = Math.min(width, height);
  const canvas = document.createElement('canvas');
  canvas.width = SMALL;
  canvas.height = SMALL;
  const pen = canvas.getContext('2d');
  if (pen) {
    // Smoothing costs three times as long, at the very moment of the tap.
    pen.imageSmoothingEnabled = false;
    pen.drawImage(video, (width - side) / 2, (height - side) / 2, side, side, 0, 0, SMALL, SMALL);
  }
  return canvas;
}

/** The canvas as a JPEG; its memory is given back now, not at some later collection. */
export async function encode(canvas: HTMLCanvasElement, quality = QUALITY): Promise<Blob> {
  const blob = await new Promise<Blob | null>((resolve) => { canvas.toBlob(resolve, 'image/jpeg', quality); });
  canvas.width = 0;
  if (!blob) throw new Error('the picture could not be encoded');
  return blob;
}
