import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** The command as built. */
export const command = join(root, 'dist/roundwright.cjs');

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** An empty folder that is gone after the test. */
export const emptyFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'roundwright test '));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

/** Runs the built command in a folder, as a user would: its own process, nothing on a terminal. */
export const roundwright = (folder: string, args: readonly string[], stdin: string | Uint8Array = '', env: Readonly<Record<string, string>> = {}): Ran => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...args], {
    cwd: folder, input: stdin, encoding: 'utf8', env: { ...process.env, XDG_CONFIG_HOME: join(folder, 'config'), ...env },
  });
  return { code: status ?? -1, out: stdout, err: stderr };
};

/** A spec with one saddle; `jig` adds to the entry, `more` adds entries. */
export const saddleSpec = ({ title = 'Brace on post', jig = '', more = '' } = {}): string => `title: ${title}
units: inch
paper: letter
rounds: { post: 1-3/8, brace: 1-1/8 }
jigs:
  - { kind: saddle-cope, name: brace saddle, branch: brace, main: post, angle: 64${jig} }
${more}`;
