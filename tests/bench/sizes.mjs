// Sizes of the finished app, packed as hosts pack it. Prints JSON.
import { readFile } from 'node:fs/promises';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

const dist = process.argv[2];
const files = [...JSON.parse(await readFile(`${dist}/precache.json`, 'utf8')), 'sw.js'];
const sizes = await Promise.all(
  files.map(async (file) => {
    const bytes = await readFile(`${dist}/${file}`);
    const brotli = brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_LGWIN]: 22 } });
    return { file, raw: bytes.length, gzip: gzipSync(bytes, { level: 9 }).length, brotli: brotli.length };
  }),
);
console.log(JSON.stringify(sizes));
