// Writes the service worker into the finished app. It serves the shell from its
// cache without asking the network, waits to be let in, and never opens the
// database.
import { readdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { generateSW } from 'workbox-build';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const kept = /\.(html|js|css|wasm|svg|png|webmanifest|zip)$/;
const own = ['sw.js', 'precache.json'];

// The page reads this list from the cache to know that nothing is missing.
const files = (await readdir(dist, { recursive: true }))
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => kept.test(file) && !own.includes(file))
  .sort();
await writeFile(`${dist}/precache.json`, JSON.stringify(files));

const result = await generateSW({
  globDirectory: dist,
  globPatterns: ['**/*.{html,js,css,wasm,svg,png,webmanifest,zip}', 'precache.json'],
  swDest: `${dist}/sw.js`,
  mode: 'production',
  sourcemap: false,
  inlineWorkboxRuntime: true,
  navigateFallback: 'index.html',
  // The rescue page is a page of its own; a missing file must look missing.
  navigateFallbackDenylist: [/\/rescue\.html$/, /\.[a-z0-9]+$/i],
  cleanupOutdatedCaches: true,
  clientsClaim: true,
  skipWaiting: false,
  dontCacheBustURLsMatching: /-[A-Za-z0-9_-]{8}\.(js|css|wasm)$/,
  maximumFileSizeToCacheInBytes: 8 << 20,
});

if (result.warnings.length > 0 || result.count !== files.length + 1) {
  console.error(result.warnings, `kept ${result.count} files of ${files.length + 1}`);
  process.exit(1);
}
console.log(`  ${result.count} files, ${Math.ceil(result.size / 1000)} kB kept for use with no signal`);
