// Frames as a phone's camera gives them in a garage, made by code: 640 × 480 grey, one printed label in each. The same seed gives
// the same frames on every machine but for the last bit of sines.

export const WIDTH = 640;
export const HEIGHT = 480;
export const KINDS = ['clean', 'tilted', 'blurred', 'stained', 'half covered'];

/** A stream of numbers from 0 to 1 (mulberry32). */
export function seeded(seed) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (least, most) => least + next() * (most - least);
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  return { next, between, normal, whole: (least, most) => Math.floor(between(least, most + 1)) };
}

/**
 * One frame of a kind. `label` is a label as the app lays it out: its size, and boxes and lines in millimetres from its corner.
 */
export function frame(kind, label, random) {
  const shot = pose(kind, label, random);
  const marks = kind === 'stained' ? stains(label, random) : kind === 'half covered' ? [cover(label, random)] : [];
  const light = { level: random.between(0.55, 1), x: random.between(-0.35, 0.35), y: random.between(-0.35, 0.35) };
  let picture = drawn(label, shot, marks, light, random);
  // The lens is never quite sharp; a moved or badly focused one far less so, in proportion to what a module measures.
  const module = shot.pixels * label.module;
  if (kind === 'blurred') {
    if (random.next() < 0.5) picture = softened(picture, module * random.between(0.3, 0.62));
    else picture = smeared(picture, module * random.between(0.9, 1.9), random.between(0, Math.PI));
  } else picture = softened(picture, random.between(0.5, 0.9));
  const grain = random.between(1.5, 5);
  const luma = new Uint8Array(WIDTH * HEIGHT);
  for (let i = 0; i < luma.length; i++) luma[i] = Math.max(0, Math.min(255, Math.round(picture[i] + random.normal() * grain)));
  return luma;
}

/** Where the label lies before the camera: a homography from pixels to millimetres. */
function pose(kind, label, random) {
  const pixels = kind === 'tilted' ? random.between(5, 9) : random.between(4.2, 9);
  const turn = random.between(0, 2 * Math.PI);
  const lean = kind === 'tilted' ? random.between(0.5, 0.95) : random.between(0, 0.22);
  const towards = random.between(0, 2 * Math.PI);
  // The camera stands 700 pixels from the picture's plane; the label leans about an axis through the QR's middle.
  const far = 700;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const axis = [Math.cos(towards), Math.sin(towards)];
  const [cl, sl] = [Math.cos(lean), Math.sin(lean)];
  const [ax, ay] = axis;
  // Columns of the lean's rotation that act on the label's own plane.
  const lean3 = [[ax * ax + cl * (1 - ax * ax), ax * ay * (1 - cl)], [ax * ay * (1 - cl), ay * ay + cl * (1 - ay * ay)], [-ay * sl, ax * sl]];
  const [u, v] = [label.middle[0], label.middle[1]];
  const at = [WIDTH / 2 + random.between(-90, 90), HEIGHT / 2 + random.between(-60, 60)];
  const forward = (x, y) => {
    const [dx, dy] = [(x - u) * pixels, (y - v) * pixels];
    const [rx, ry] = [c * dx - s * dy, s * dx + c * dy];
    const [px, py, pz] = lean3.map(([a, b]) => a * rx + b * ry);
    const scale = far / (far + pz);
    return [at[0] + px * scale, at[1] + py * scale];
  };
  const corners = [[0, 0], [10, 0], [10, 10], [0, 10]];
  return { pixels, back: homography(corners.map(([x, y]) => forward(x, y)), corners) };
}

/** The eight numbers that take four points to four others. */
function homography(from, to) {
  const rows = [];
  from.forEach(([x, y], i) => {
    const [u, v] = to[i];
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y, u], [0, 0, 0, x, y, 1, -v * x, -v * y, v]);
  });
  for (let i = 0; i < 8; i++) {
    let best = i;
    for (let j = i + 1; j < 8; j++) if (Math.abs(rows[j][i]) > Math.abs(rows[best][i])) best = j;
    [rows[i], rows[best]] = [rows[best], rows[i]];
    for (let j = 0; j < 8; j++) {
      if (j === i) continue;
      const share = rows[j][i] / rows[i][i];
      for (let k = i; k < 9; k++) rows[j][k] -= share * rows[i][k];
    }
  }
  return rows.map((row, i) => row[8] / row[i]);
}

/** Oil, rust and pencil over the label: translucent blobs and scratches. */
function stains(label, random) {
  const { side, middle } = label;
  return Array.from({ length: random.whole(2, 6) }, () => {
    const at = [middle[0] + random.between(-0.6, 0.6) * side, middle[1] + random.between(-0.6, 0.6) * side];
    if (random.next() < 0.3) {
      const way = random.between(0, Math.PI);
      return { line: [at, Math.cos(way), Math.sin(way), random.between(0.15, 0.5)], dark: random.next() < 0.5 ? 0.15 : -1 };
    }
    // Oil darkens white paper to grey; now and then a crust hides all.
    const crust = random.next() < 0.25;
    const size = crust ? random.between(0.05, 0.12) : random.between(0.15, 0.42);
    return { at, radius: size * side, waves: random.whole(2, 5), phase: random.between(0, 6), dark: crust ? 0.2 : random.between(0.4, 0.75) };
  });
}

/** A thumb, a rag or grease over one edge or corner of the QR, of a sliver up to half of it: much of that nobody can read. */
function cover(label, random) {
  const { side, middle } = label;
  const way = random.between(0, 2 * Math.PI);
  const depth = random.between(0.04, 0.5);
  const shade = random.between(40, 190);
  // A straight edge at so much of the side, counted along `way` from the far corner's support.
  const [c, s] = [Math.cos(way), Math.sin(way)];
  const reach = ((Math.abs(c) + Math.abs(s)) * side) / 2;
  return { half: [c, s, c * middle[0] + s * middle[1] + reach - depth * side * (Math.abs(c) + Math.abs(s))], shade };
}

function drawn(label, shot, marks, light, random) {
  const picture = new Float32Array(WIDTH * HEIGHT);
  const paper = random.between(205, 245);
  const ink = random.between(18, 50);
  const bench = random.between(35, 130);
  const grain = [random.between(0.02, 0.08), random.between(0.02, 0.08), random.between(0, 6)];
  const shade = (x, y, px, py) => {
    const over = marks.find((mark) => mark.half && mark.half[0] * x + mark.half[1] * y > mark.half[2]);
    if (over) return over.shade + 12 * Math.sin(px * 0.05 + py * 0.03);
    if (x < 0 || y < 0 || x > label.width || y > label.height) return bench + 14 * Math.sin(px * grain[0] + grain[2]) * Math.cos(py * grain[1]);
    let value = label.isDark(x, y) ? ink : paper;
    for (const mark of marks) {
      if (mark.line) {
        const [[x0, y0], c, s, wide] = mark.line;
        if (Math.abs(-s * (x - x0) + c * (y - y0)) < wide / 2) value = mark.dark < 0 ? paper : ink;
      } else if (mark.at) {
        const [dx, dy] = [x - mark.at[0], y - mark.at[1]];
        const edge = mark.radius * (1 + 0.18 * Math.sin(mark.waves * Math.atan2(dy, dx) + mark.phase));
        if (Math.hypot(dx, dy) < edge) value = value * mark.dark;
      }
    }
    return value;
  };
  const h = shot.back;
  const seen = (sx, sy) => {
    const w = h[6] * sx + h[7] * sy + 1;
    return shade((h[0] * sx + h[1] * sy + h[2]) / w, (h[3] * sx + h[4] * sy + h[5]) / w, sx, sy);
  };
  const isNear = (sx, sy) => {
    const w = h[6] * sx + h[7] * sy + 1;
    const [x, y] = [(h[0] * sx + h[1] * sy + h[2]) / w, (h[3] * sx + h[4] * sy + h[5]) / w];
    return x > -2 && y > -2 && x < label.width + 2 && y < label.height + 2;
  };
  for (let py = 0; py < HEIGHT; py++) {
    for (let px = 0; px < WIDTH; px++) {
      // Nine points of each pixel on the label: edges fall between pixels.
      let value = 0;
      if (isNear(px + 0.5, py + 0.5)) {
        for (let sub = 0; sub < 9; sub++) value += seen(px + ((sub % 3) + 0.5) / 3, py + (Math.floor(sub / 3) + 0.5) / 3) / 9;
      } else value = seen(px + 0.5, py + 0.5);
      const lit = light.level * (1 + light.x * (px / WIDTH - 0.5) * 2 + light.y * (py / HEIGHT - 0.5) * 2);
      picture[py * WIDTH + px] = Math.min(255, value * lit);
    }
  }
  return picture;
}

/** Out of focus: a Gaussian. */
function softened(picture, sigma) {
  const reach = Math.ceil(sigma * 3);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)));
  return folded(folded(picture, weights, 1, 0), weights, 0, 1);
}

function folded(picture, weights, dx, dy) {
  const reach = (weights.length - 1) / 2;
  const sum = weights.reduce((a, b) => a + b);
  const result = new Float32Array(picture.length);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      let value = 0;
      for (let i = -reach; i <= reach; i++) {
        const sx = Math.max(0, Math.min(WIDTH - 1, x + dx * i));
        const sy = Math.max(0, Math.min(HEIGHT - 1, y + dy * i));
        value += weights[i + reach] * picture[sy * WIDTH + sx];
      }
      result[y * WIDTH + x] = value / sum;
    }
  }
  return result;
}

/** Moved while the shutter was open: along a straight way of so many pixels. */
function smeared(picture, length, way) {
  const steps = Math.max(2, Math.ceil(length * 2));
  const result = new Float32Array(picture.length);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      let value = 0;
      for (let step = 0; step < steps; step++) {
        const along = (step / (steps - 1) - 0.5) * length;
        const sx = Math.max(0, Math.min(WIDTH - 1, Math.round(x + along * Math.cos(way))));
        const sy = Math.max(0, Math.min(HEIGHT - 1, Math.round(y + along * Math.sin(way))));
        value += picture[sy * WIDTH + sx];
      }
      result[y * WIDTH + x] = value / steps;
    }
  }
  return result;
}
