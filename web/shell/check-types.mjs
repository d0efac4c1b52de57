// Checks each place where code runs against only what exists there.
import { spawnSync } from 'node:child_process';
import { readdirSync, existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const here = fileURLToPath(new URL('.', import.meta.url));
const places = readdirSync(here, { withFileTypes: true })
  .filter((place) => place.isDirectory() && existsSync(`${here}/${place.name}/tsconfig.json`))
  .flatMap((place) => readdirSync(`${here}/${place.name}`).map((file) => `${place.name}/${file}`))
  .filter((path) => /\/tsconfig[^/]*\.json$/.test(path));

const projects = ['tsconfig.json', ...places];

const failed = projects.filter((project) => {
  const { status } = spawnSync('npx', ['--no-install', 'tsc', '--noEmit', '-p', project], { cwd: here, stdio: 'inherit' });
  console.log(`${status === 0 ? 'sound ' : 'FAILED'} ${project}`);
  return status !== 0;
});
process.exit(failed.length === 0 ? 0 : 1);
