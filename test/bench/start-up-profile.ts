import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { Row } from './measure.js';

interface Profile {
  readonly nodes: readonly { readonly id: number; readonly callFrame: { readonly functionName: string; readonly url: string; readonly lineNumber: number } }[];
  readonly samples: readonly number[];
  readonly timeDeltas: readonly number[];
}

/** Which module each line of an unminified bundle comes from: esbuild puts its path above its code. */
const moduleOfLines = (bundle: string): readonly string[] => {
  let current = 'bundle';
  return bundle.split('\n').map((line) => {
    current = /^ *\/\/ ((?:node_modules|src)\/\S+)$/.exec(line)?.[1] ?? current;
    return current;
  });
};

const bucketOf = (module: string): string => {
  if (module === 'bundle') return 'the bundle itself';
  const parts = module.split('/');
  return parts[0] === 'src' ? `roundwright: ${parts[1]!.replace(/\.ts$/, '')}` : parts.slice(1, parts[1]?.startsWith('@') ? 3 : 2).join('/');
};

/** Self time by bucket, ms. */
const shares = (profile: Profile, lines: readonly string[]): ReadonlyMap<string, number> => {
  const buckets = new Map(profile.nodes.map(({ id, callFrame: { functionName, url, lineNumber } }) => {
    if (url.endsWith('cli.cjs')) return [id, bucketOf(lines[lineNumber] ?? 'bundle')] as const;
    if (functionName.startsWith('(')) return [id, functionName.replace('(program)', 'V8 and the kernel').replace(/[()]/g, '')] as const;
    return [id, url.startsWith('node:') || url === '' ? 'node itself' : 'starter'] as const;
  }));
  const sums = new Map<string, number>();
  profile.samples.forEach((id, index) => {
    const bucket = buckets.get(id)!;
    sums.set(bucket, (sums.get(bucket) ?? 0) + profile.timeDeltas[index]! / 1000);
  });
  return sums;
};

/** As `dist/` is made, but with names and places left in, and run once to make its code cache. */
const buildReadable = async (root: string, folder: string): Promise<string> => {
  const { leanLibraries } = await import(join(root, '.tools/lean-libraries.mjs')) as { leanLibraries: () => never };
  await build({
    absWorkingDir: root, entryPoints: ['src/cli/main.ts'], outfile: join(folder, 'cli.cjs'), bundle: true, platform: 'node', format: 'cjs',
    charset: 'ascii', mainFields: ['main', 'module'], plugins: [leanLibraries()], logLevel: 'warning',
    define: { 'import.meta.url': 'bundleUrl', versionAtBuild: '"bench"' },
    banner: { js: `const bundleUrl=${JSON.stringify(`file://${join(root, 'dist/cli.cjs')}`)};` },
  });
  writeFileSync(join(folder, 'roundwright.cjs'), readFileSync(join(root, 'dist/roundwright.cjs')));
  const warmed = spawnSync(process.execPath, [join(root, '.tools/warm.cjs'), folder, mkdtempSync(join(folder, 'warm-'))], { encoding: 'utf8' });
  if (warmed.status !== 0) throw new Error(warmed.stderr);
  return readFileSync(join(folder, 'cli.cjs'), 'utf8');
};

/** What the time of one draw goes on, by library and by part of the program: sampled every 100 µs, so shares rather than exact times. */
export const startUpShares = async (root: string, spec: string): Promise<readonly Row[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'roundwright-profile-'));
  try {
    const bundle = await buildReadable(root, folder);
    const { status, stderr } = spawnSync(process.execPath, [
      '--cpu-prof', '--cpu-prof-interval', '100', '--cpu-prof-dir', join(folder, 'profile'), join(folder, 'roundwright.cjs'), 'draw', spec, '--out', join(folder, 'out'),
    ], { encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    const [file] = readdirSync(join(folder, 'profile'));
    const profile = JSON.parse(readFileSync(join(folder, 'profile', file!), 'utf8')) as Profile;
    return [...shares(profile, moduleOfLines(bundle))].filter(([, time]) => time >= 0.5).sort((a, b) => b[1] - a[1])
      .map(([name, time]) => ({ name: `  of which ${name}`, figure: `${time.toFixed(1)} ms`, bar: '' }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
