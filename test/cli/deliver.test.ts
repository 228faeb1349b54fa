import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { command, emptyFolder, roundwright, saddleSpec } from './run-command.js';

const mark = 'unfinished-draw.txt';
const hidden = /^\.[0-9a-f]{24}\.roundwright-part$/;

/** The files of a folder that a maker sees, each with its bytes. */
const setIn = (folder: string): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !hidden.test(entry.parentPath.split('/').at(-1)!) && entry.name !== mark)
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((path) => [path.slice(folder.length + 1), readFileSync(path, 'latin1')]),
  );

const args = (spec: string): readonly string[] => ['draw', spec, '--out', 'x', '--quiet', '--format', 'svg,pdf'];

/** A folder with two specs, `old.yaml` drawn into `x`, and both sets as they ought to be. */
const drawnOnce = () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'old.yaml'), saddleSpec());
  writeFileSync(join(folder, 'new.yaml'), saddleSpec({ title: 'Brace on a thicker post' }).replace('1-3/8', '1-1/2'));
  for (const [spec, out] of [
    ['old', 'x'],
    ['old', 'old'],
    ['new', 'new'],
  ] as const)
    expect(roundwright(folder, ['draw', `${spec}.yaml`, '--out', out, '--quiet', '--format', 'svg,pdf']).code).toBe(0);
  return { folder, x: join(folder, 'x'), before: setIn(join(folder, 'old')), after: setIn(join(folder, 'new')) };
};

/** A file that does something more at every call of a function of node:fs; `n` counts them. */
const hook = (folder: string, call: string, action: string): string => {
  const preload = join(folder, 'hook.cjs');
  writeFileSync(
    preload,
    `const fs = require('node:fs'); const real = fs.${call}; let n = 0;
fs.${call} = (...given) => { n += 1; ${action}; return real(...given); };`,
  );
  return preload;
};

/** Ends the process by a signal at the given call of a function of node:fs. */
const killAt = (folder: string, call: string, at: number) => {
  const preload = hook(folder, call, `if (n === ${at}) process.kill(process.pid, 'SIGKILL')`);
  return spawnSync(process.execPath, ['--require', preload, command, ...args('new.yaml')], {
    cwd: folder,
    encoding: 'utf8',
  });
};

test('a run killed before its first file is in place leaves the old set; killed later, it leaves a mark; the next draw mends it', () => {
  const { folder, x, before, after } = drawnOnce();
  const files = after.size;
  expect(files).toBeGreaterThan(4);
  for (const [call, at, marked] of [
    ['writeFileSync', 2, false],
    ['writeFileSync', files, false],
    ['renameSync', 1, true],
    ['renameSync', files, true],
  ] as const) {
    expect(killAt(folder, call, at).signal).toBe('SIGKILL');
    expect([call, at, existsSync(join(x, mark))]).toEqual([call, at, marked]);
    if (!marked || at === 1) expect(setIn(x)).toEqual(before);
    else expect(setIn(x)).not.toEqual(before);
    expect(roundwright(folder, args('old.yaml')).code).toBe(0);
    expect(existsSync(join(x, mark))).toBe(false);
    expect(setIn(x)).toEqual(before);
  }
}, 60_000);

test('folders of half sets are swept after an hour, and not before', () => {
  const { folder, x } = drawnOnce();
  expect(killAt(folder, 'writeFileSync', 3).signal).toBe('SIGKILL');
  const half = (): readonly string[] => readdirSync(x).filter((name) => hidden.test(name));
  expect(half()).toHaveLength(1);
  expect(roundwright(folder, args('old.yaml')).code).toBe(0);
  expect(half()).toHaveLength(1);
  const then = Date.now() / 1000 - 7200;
  utimesSync(join(x, half()[0]!), then, then);
  expect(roundwright(folder, args('old.yaml')).code).toBe(0);
  expect(half()).toEqual([]);
});

test('what stands in the way of one file is told before any is replaced', () => {
  const { folder, x, before } = drawnOnce();
  mkdirSync(join(folder, 'y', 'brace-saddle.svg'), { recursive: true });
  const { code, err } = roundwright(folder, ['draw', 'new.yaml', '--out', 'y', '--quiet']);
  expect([code, err]).toEqual([
    3,
    'roundwright: cannot write y/brace-saddle.svg: a folder of that name is in the way\n',
  ]);
  expect(readdirSync(join(folder, 'y'))).toEqual(['brace-saddle.svg']);
  expect(setIn(x)).toEqual(before);
});

test('two runs that put files into one folder at once do not mix them', async () => {
  const { folder, x, before, after } = drawnOnce();
  // The one is slow with its first file, the other with all after: unhindered, the first keeps its first file and loses the others.
  const slow = hook(
    folder,
    'renameSync',
    "Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, (n === 1) === process.argv.includes('new.yaml') ? 150 : 10)",
  );
  const run = (spec: string): Promise<number | null> =>
    new Promise((resolve) => {
      spawn(process.execPath, ['--require', slow, command, ...args(spec)], { cwd: folder, stdio: 'ignore' }).on(
        'close',
        resolve,
      );
    });
  expect(await Promise.all([run('old.yaml'), run('new.yaml'), run('old.yaml')])).toEqual([0, 0, 0]);
  const left = setIn(x);
  expect([before, after].filter((set) => [...set].every(([name, bytes]) => left.get(name) === bytes))).toHaveLength(1);
  expect(readdirSync(x).filter((name) => name.startsWith('.') || name.startsWith(mark))).toEqual([]);
}, 60_000);
