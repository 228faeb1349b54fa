import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { randomFrom } from './random.js';

/*
 * `npm run kills`: draws over an earlier set and ends the process at a moment by chance, 200 times, every second time at one of its renames.
 * What lies in the folder afterwards has to be the old set, the new one, or be marked.
 */
const count = Number(process.argv[2] ?? 200);
const folder = mkdtempSync(join(tmpdir(), 'roundwright-kills-'));
const out = join(folder, 'x');
const spec = (main: string): string =>
  `title: Brace on post\nrounds: { post: ${main}, brace: 28.6 }\njigs:\n  - { kind: saddle-cope, name: brace saddle, branch: brace, main: post, angle: 64 }\n`;
for (const [name, main] of [
  ['old', '35'],
  ['new', '38'],
] as const)
  writeFileSync(join(folder, `${name}.yaml`), spec(main));
writeFileSync(
  join(folder, 'at-rename.cjs'),
  `const fs = require('node:fs'); const real = fs.renameSync; let n = 0;
fs.renameSync = (...given) => { n += 1; if (n === Number(process.env.KILL_AT)) process.kill(process.pid, 'SIGKILL'); return real(...given); };`,
);

interface End {
  readonly killed: boolean;
  readonly ms: number;
}

const draw = (
  name: string,
  to: string,
  { after, atRename }: { readonly after?: number; readonly atRename?: number } = {},
): Promise<End> =>
  new Promise((resolve) => {
    const hook = atRename === undefined ? [] : ['--require', join(folder, 'at-rename.cjs')];
    const begun = performance.now();
    const child = spawn(
      process.execPath,
      [...hook, 'dist/roundwright.cjs', 'draw', join(folder, `${name}.yaml`), '--out', to, '--quiet'],
      { stdio: 'inherit', env: { ...process.env, KILL_AT: String(atRename) } },
    );
    const timer = after === undefined ? undefined : setTimeout(() => child.kill('SIGKILL'), after);
    child.on('exit', (_code, signal) => {
      clearTimeout(timer);
      resolve({ killed: signal !== null, ms: performance.now() - begun });
    });
  });

const setIn = (path: string): string =>
  JSON.stringify(
    readdirSync(path, { withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name !== 'unfinished-draw.txt')
      .map(({ name }) => name)
      .sort()
      .map((name) => [name, readFileSync(join(path, name), 'latin1')]),
  );

const state = (sets: Readonly<Record<string, string>>): string => {
  if (existsSync(join(out, 'unfinished-draw.txt'))) return 'marked';
  const now = setIn(out);
  return Object.keys(sets).find((name) => sets[name] === now) ?? 'mixed, and not marked';
};

const tally = new Map<string, number>();
try {
  await draw('old', join(folder, 'old'));
  const { ms: whole } = await draw('new', join(folder, 'new'));
  const sets = { old: setIn(join(folder, 'old')), new: setIn(join(folder, 'new')) };
  for (let n = 0; n < count; n += 1) {
    rmSync(out, { recursive: true, force: true });
    await draw('old', out);
    const { below, next } = randomFrom(1, n);
    const { killed } = await draw(
      'new',
      out,
      n % 2 === 0 ? { after: next() * 1.1 * whole } : { atRename: 1 + below(4) },
    );
    const found = `${killed ? 'killed' : 'ended by itself'}: ${state(sets)}`;
    tally.set(found, (tally.get(found) ?? 0) + 1);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const [found, times] of [...tally].sort()) console.log(`${String(times).padStart(4)}  ${found}`);
if ([...tally.keys()].some((found) => found.endsWith('mixed, and not marked'))) process.exitCode = 1;
