// Pictures with about the weight of photos: shapes, and noise as a sensor has it.

import { seeded } from './seeded.js';

/** A JPEG with noise of a strength; more noise, more bytes. */
export async function picture(width, height, noise, quality = 0.9) {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  const chance = seeded(width);
  const ground = context.createLinearGradient(0, 0, width, height);
  ground.addColorStop(0, '#3b4a40');
  ground.addColorStop(1, '#c9b79a');
  context.fillStyle = ground;
  context.fillRect(0, 0, width, height);
  for (let i = 0; i < 120; i++) {
    context.fillStyle = `hsl(${chance.below(360)} 25% ${20 + chance.below(60)}%)`;
    context.beginPath();
    context.ellipse(chance.below(width), chance.below(height), width / (8 + chance.below(30)), height / (8 + chance.below(30)), chance.next() * 3, 0, 7);
    context.fill();
  }
  if (noise > 0) addNoise(context, width, height, noise, chance);
  return await (await canvas.convertToBlob({ type: 'image/jpeg', quality })).arrayBuffer();
}

function addNoise(context, width, height, noise, chance) {
  const band = 256;
  for (let top = 0; top < height; top += band) {
    const data = context.getImageData(0, top, width, Math.min(band, height - top));
    for (let i = 0; i < data.data.length; i += 4) {
      const grain = (chance.next() - 0.5) * noise;
      data.data[i] += grain;
      data.data[i + 1] += grain;
      data.data[i + 2] += grain;
    }
    context.putImageData(data, 0, top);
  }
}

/** The same picture under another name: what follows the end of a JPEG is not looked at. */
export function another(jpeg, number) {
  const bytes = new Uint8Array(jpeg.byteLength + 8);
  bytes.set(new Uint8Array(jpeg));
  new DataView(bytes.buffer).setFloat64(jpeg.byteLength, number + Math.random());
  return bytes.buffer;
}

let twelve;

/** 4032 × 3024, three to four megabytes: what a phone's camera hands over. */
export async function twelveMegapixels() {
  twelve ??= await picture(4032, 3024, 26, 0.9);
  return twelve;
}
