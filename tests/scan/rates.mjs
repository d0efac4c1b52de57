// Reads the same frames with our reader and with a general decoder, both as wasm in this process, and says how many and how fast.
//
//   node rates.mjs [EACH] [SEED]    prints JSON with rates and times; fails when ours is behind by more than two points.
//   Times are told, not asserted: a machine that others use would decide.
import { readFileSync } from 'node:fs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { frame, HEIGHT, KINDS, seeded, WIDTH } from './frames.mjs';
import { labelOf, readFrame } from './symbols.mjs';

const [each, seed] = [Number(process.argv[2] ?? 60), Number(process.argv[3] ?? 20261128)];
const random = seeded(seed);
const wasm = readFileSync(new URL(import.meta.resolve('zxing-wasm/reader/zxing_reader.wasm')));
await prepareZXingModule({ overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.length) }, fireImmediately: true });

/** As fast as it goes, and trying as hard as it can. */
const MANNERS = {
  fast: { formats: ['QRCode'], maxNumberOfSymbols: 1, tryHarder: false, tryRotate: false, tryInvert: false, tryDownscale: false },
  hard: { formats: ['QRCode'], maxNumberOfSymbols: 1, tryHarder: true, tryRotate: true, tryInvert: false, tryDownscale: true },
};

async function general(luma, manner) {
  const data = new Uint8ClampedArray(luma.length * 4);
  for (let at = 0; at < luma.length; at++) data.fill(luma[at], at * 4, at * 4 + 3).fill(255, at * 4 + 3, at * 4 + 4);
  return timed(async () => (await readBarcodes({ data, width: WIDTH, height: HEIGHT }, MANNERS[manner])).map(({ text }) => text));
}

function ours(luma) {
  return timed(() => readFrame(luma, WIDTH, HEIGHT));
}

/** Both the time that passed and the processor's: others at work on the machine lengthen only the first. */
async function timed(work) {
  const [began, before] = [performance.now(), process.cpuUsage()];
  const texts = await work();
  const { user, system } = process.cpuUsage(before);
  return { texts, took: performance.now() - began, worked: (user + system) / 1000 };
}

const readers = { ours, 'zxing-wasm fast': (luma) => general(luma, 'fast'), 'zxing-wasm hard': (luma) => general(luma, 'hard') };
const tally = Object.fromEntries(Object.keys(readers).map((name) => [name, { read: Object.fromEntries(KINDS.map((kind) => [kind, 0])), wrong: 0, times: [], worked: [], did: [] }]));

// Engines compile while they run: what comes first is not counted.
const warm = frame('clean', labelOf(1), seeded(1));
for (const read of Object.values(readers)) for (let time = 0; time < 10; time++) await read(warm);

for (const kind of KINDS) {
  for (let nth = 0; nth < each; nth++) {
    const label = labelOf(random.whole(1, 9_999));
    const luma = frame(kind, label, random);
    for (const [name, read] of Object.entries(readers)) {
      const { texts, took, worked } = await read(luma);
      const told = tally[name];
      told.read[kind] += texts.includes(label.text) ? 1 : 0;
      told.wrong += texts.filter((text) => text !== label.text).length;
      told.times.push(took);
      told.worked.push(worked);
      told.did.push(texts.includes(label.text));
    }
  }
}

const all = each * KINDS.length;
// What all of them read: there the times are of the same work. A frame that one gives up at once tells nothing of how fast it reads.
const byAll = Array.from({ length: all }, (_, nth) => Object.values(tally).every(({ did }) => did[nth]));
const result = Object.fromEntries(Object.entries(tally).map(([name, { read, wrong, times, worked }]) => {
  const at = (list, share) => Number(list.toSorted((a, b) => a - b)[Math.floor((list.length - 1) * share)]?.toFixed(2));
  const same = worked.filter((_, nth) => byAll[nth]);
  const rates = Object.fromEntries(Object.entries(read).map(([kind, count]) => [kind, Number(((100 * count) / each).toFixed(1))]));
  const total = Object.values(read).reduce((a, b) => a + b);
  return [name, { rates, overall: Number(((100 * total) / all).toFixed(1)), wrong, p50: at(times, 0.5), p95: at(times, 0.95), worked50: at(worked, 0.5), worked95: at(worked, 0.95), same50: at(same, 0.5), same95: at(same, 0.95), mean: Number((worked.reduce((a, b) => a + b) / all).toFixed(2)) }];
}));
console.log(JSON.stringify({ frames: all, byAll: byAll.filter(Boolean).length, seed, ...result }));

const failures = [];
const best = Math.max(result['zxing-wasm fast'].overall, result['zxing-wasm hard'].overall);
if (result.ours.overall < best - 2) failures.push(`ours reads ${result.ours.overall} %, the general decoder ${best} %`);
if (result.ours.wrong > 0) failures.push(`${result.ours.wrong} codes were read that nobody printed`);
if (failures.length > 0) {
  console.error(failures.join('\n'));
  process.exit(1);
}
