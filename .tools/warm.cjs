// Runs the built command on the starter of every kind and keeps what V8 compiled on the way: dist/cli.cache.
// Arguments: the dist folder, an empty folder to draw into.
const { readFileSync, writeFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

// A cache fits only the flags that it was made with: the same as in src/cli/start.ts.
if (process.versions.node.startsWith('20.')) require('node:v8').setFlagsFromString('--interrupt-budget=400000');

const [dist, work] = process.argv.slice(2);
const file = join(dist, 'cli.cjs');
// The same text, to the letter, that src/cli/start.ts compiles.
const script = new Script(`(function(exports,require,module,__filename,__dirname){${readFileSync(file, 'latin1')}\n})`, { filename: file });
const main = { exports: {} };
script.runInThisContext()(main.exports, require, main, file, dist);
const { run } = main.exports;

const quiet = { out: () => {}, err: (text) => process.stderr.write(text), terminal: false, env: {} };
const warm = async () => {
  const spec = join(work, 'warm.yaml');
  let starter = '';
  await run(['new', 'saddle-cope'], { ...quiet, out: (text) => { starter += text; } });
  writeFileSync(spec, starter);
  for (const command of ['draw', 'check']) {
    const code = await run([command, spec, ...(command === 'draw' ? ['--out', join(work, 'out')] : [])], quiet);
    if (code > 1) throw new Error(`${command} of the starter ended with ${code}`);
  }
  writeFileSync(join(dist, 'cli.cache'), script.createCachedData());
};
warm().catch((error) => { console.error(error); process.exitCode = 1; });
