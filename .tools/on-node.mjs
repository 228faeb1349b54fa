// `npm run nodes`: runs the suite, and draws the demos and holds them against output/, under each Node that is promised. Versions may be
// given: `npm run nodes -- latest`. A Node's binary comes as the registry's package `node`.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
/** The oldest that `engines` allows, and every line kept up since. */
const promised = ['20.19', '22', '24', '26'];

/** The path of a Node's binary, installed where nothing of the project looks for packages. */
const binaryOf = (version) => {
  const folder = join(root, 'node_modules/.cache/nodes', version);
  mkdirSync(folder, { recursive: true });
  execFileSync('npm', ['install', '--prefix', folder, '--no-save', '--no-package-lock', '--no-audit', '--no-fund', '--loglevel=error', `node@${version}`], { stdio: 'inherit', shell: process.platform === 'win32' });
  return join(folder, 'node_modules/node/bin', process.platform === 'win32' ? 'node.exe' : 'node');
};

const steps = [['node_modules/vitest/vitest.mjs', 'run', '--config', '.tools/vitest.config.ts'], ['.tools/check-output.mjs']];
const failed = [];
for (const version of process.argv.length > 2 ? process.argv.slice(2) : promised) {
  const node = binaryOf(version);
  const name = execFileSync(node, ['--version'], { encoding: 'utf8' }).trim();
  for (const step of steps) {
    console.log(`== ${name} ${step[0]}`);
    // Whatever starts a process by the name `node` gets this one too.
    const env = { ...process.env, PATH: `${dirname(node)}${process.platform === 'win32' ? ';' : ':'}${process.env.PATH}` };
    if (spawnSync(node, step, { cwd: root, env, stdio: 'inherit' }).status !== 0) failed.push(`${name} ${step[0]}`);
  }
}
for (const one of failed) console.error(`FAILED: ${one}`);
process.exitCode = failed.length > 0 ? 1 : 0;
