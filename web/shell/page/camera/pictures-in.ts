// Pictures that come as files: from the phone's own camera, or chosen.

/** A picture as it is stored. */
export interface Picture {
  bytes: ArrayBuffer;
  media_type: string;
}

/** Reads a file whole, at once: one made by a camera may be gone a moment later. */
export async function readPicture(file: File): Promise<Picture> {
  const bytes = await file.arrayBuffer();
  if (bytes.byteLength === 0) throw new Error('the file is empty');
  return { bytes, media_type: file.type || sniff(bytes) };
}

function sniff(bytes: ArrayBuffer): string {
  const [a, b, c] = new Uint8Array(bytes, 0, Math.min(3, bytes.byteLength));
  if (a === 0xff && b === 0xd8) return 'image/jpeg';
  return a === 0x89 && b === 0x50 && c === 0x4e ? 'image/png' : 'application/octet-stream';
}

/** What the chooser offers; the second also lets phones hand over their camera. */
export const CHOOSE = 'image/jpeg,image/png';
export const CAMERA = 'image/*';
