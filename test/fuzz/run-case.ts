import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Io } from '../../src/cli/io.js';

/** What one run of the command came to. */
export interface CaseRun {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  /** Processor time, s: it does not count what else the machine does. */
  readonly seconds: number;
  /** What lies in the folder afterwards, by path inside it. */
  readonly files: ReadonlyMap<string, Buffer>;
}

type Main = { readonly run: (words: readonly string[], io: Io) => Promise<number> };

/** The command as built, loaded into this process. */
export const loadCommand = (root: string): Main => createRequire(import.meta.url)(join(root, 'dist/cli.cjs')) as Main;

const filesUnder = (folder: string): ReadonlyMap<string, Buffer> =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((path) => [path.slice(folder.length + 1), readFileSync(path)]),
  );

const cpuSeconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

/** Runs the command on a spec in a folder that is emptied first, inside this process. */
export async function runCase(
  { run }: Main,
  folder: string,
  spec: Uint8Array,
  words: readonly string[],
): Promise<CaseRun> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'config'), { recursive: true });
  const file = join(folder, 'piece.yaml');
  writeFileSync(file, spec);
  const said = { out: '', err: '' };
  const io: Io = {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    terminal: false,
    readStdin: () => spec,
    env: { XDG_CONFIG_HOME: join(folder, 'config'), ROUNDWRIGHT_DEBUG: '1' },
  };
  const start = cpuSeconds();
  const code = await run(['draw', file, '--out', join(folder, 'out'), ...words], io);
  const seconds = cpuSeconds() - start;
  const named = (text: string): string => text.replaceAll(`${folder}/`, '');
  const files = filesUnder(folder);
  return {
    code,
    out: named(said.out),
    err: named(said.err),
    seconds,
    files: new Map([...files].filter(([name]) => name !== 'piece.yaml')),
  };
}
