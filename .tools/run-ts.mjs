// Runs one TypeScript file of the project: bundled to a temporary module beside node_modules, so that imports resolve.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [entry, ...rest] = process.argv.slice(2);
mkdirSync(join(root, 'node_modules/.cache'), { recursive: true });
const folder = mkdtempSync(join(root, 'node_modules/.cache/run-ts-'));
try {
  const outfile = join(folder, 'main.mjs');
  await build({ entryPoints: [entry], outfile, bundle: true, platform: 'node', format: 'esm', packages: 'external', sourcemap: 'inline', logLevel: 'warning' });
  const { status } = spawnSync(process.execPath, ['--enable-source-maps', outfile, ...rest], { stdio: 'inherit', cwd: root });
  process.exitCode = status ?? 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
