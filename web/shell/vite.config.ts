import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// Everything is addressed from where the page lies, so that the finished app
// works on any static host, under any path. Nothing is inlined: the policy in
// index.html allows no data addresses.
export default defineConfig({
  root: here('.'),
  base: './',
  worker: { format: 'es' },
  // The colours are tested as they are written.
  test: { css: true },
  build: {
    outDir: here('../dist'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: { input: { index: here('index.html'), rescue: here('rescue.html') } },
  },
});
