// Fails when the committed output/ is not, file for file, what the code draws from templates-spec/. SVG and report.json byte for
// byte, PDFs object for object with their streams unpacked: how zlib packs them differs between versions of Node.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unpackedPdf } from './unpack-pdf.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const git = (...args) => execFileSync('git', args, { cwd: root, maxBuffer: 1 << 28 });
const drawn = mkdtempSync(join(tmpdir(), 'roundwright-output-'));
process.on('exit', () => rmSync(drawn, { recursive: true, force: true }));

for (const demo of readdirSync(join(root, 'templates-spec')).filter((name) => name.endsWith('.yaml'))) {
  const out = join(drawn, basename(demo, '.yaml'));
  execFileSync(process.execPath, [join(root, 'dist/roundwright.cjs'), 'draw', '--quiet', join('templates-spec', demo), '--out', out], { cwd: root, stdio: 'inherit' });
}

const committed = git('ls-tree', '-r', '-z', '--name-only', 'HEAD', 'output/').toString('utf8').split('\0').filter((name) => name !== '');
const made = readdirSync(drawn, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile())
  .map((entry) => ['output', ...relative(drawn, join(entry.parentPath, entry.name)).split(sep)].join('/'));
const problems = [];
if (committed.length === 0) problems.push('nothing is committed under output/');
for (const file of made) if (!committed.includes(file)) problems.push(`${file}: drawn, but not committed`);
for (const file of committed) {
  const before = git('show', `HEAD:${file}`);
  if (!made.includes(file)) {
    problems.push(`${file}: committed, but not drawn any more`);
    continue;
  }
  const now = readFileSync(join(drawn, ...file.split('/').slice(1)));
  if (before.equals(now)) continue;
  if (!file.endsWith('.pdf') || !unpackedPdf(before).equals(unpackedPdf(now))) problems.push(`${file}: not what the code draws`);
}
for (const problem of problems) console.error(problem);
if (problems.length > 0) process.exitCode = 1;
else console.log(`output/ is what the code draws: ${committed.length} files compared`);
