import { readFileSync, readSync } from 'node:fs';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';
import type { Io } from './io.js';

// The command as installed: loads the one bundled file together with what V8 made of it when it was built. Node 20 has no
// compile cache of its own. A cache made by another Node is turned down by V8, and the file is compiled afresh.

type Main = { readonly run: (args: readonly string[], io: Io) => Promise<number> };

const readCache = (): Buffer | undefined => {
  try {
    return readFileSync(join(__dirname, 'cli.cache'));
  } catch {
    return undefined;
  }
};

/**
 * A draw is over before optimised code pays: compiling it takes a quarter of a small draw's time from a machine with two cores.
 * This lets functions run longer before V8 optimises them; large sets still get there. Node 22 and later tier up in
 * another way and do not know the flag.
 */
const optimiseLater = (): void => {
  if (process.versions.node.startsWith('20.')) setFlagsFromString('--interrupt-budget=400000');
};

const loadMain = (): Main => {
  const filename = join(__dirname, 'cli.cjs');
  // ASCII only (the build sees to it), so this reads the bytes as they are, at a third of the time of UTF-8.
  const source = `(function(exports,require,module,__filename,__dirname){${readFileSync(filename, 'latin1')}\n})`;
  const cachedData = readCache();
  const script = new Script(source, cachedData === undefined ? { filename } : { filename, cachedData });
  const main = { exports: {} as Main };
  (script.runInThisContext() as (...given: unknown[]) => void)(main.exports, require, main, filename, __dirname);
  return main.exports;
};

const readStdin = (limit: number): Uint8Array => {
  const chunks: Uint8Array[] = [];
  const buffer = Buffer.alloc(65536);
  for (let total = 0; total <= limit;) {
    const length = readSome(buffer);
    if (length === 0) break;
    chunks.push(Uint8Array.from(buffer.subarray(0, length)));
    total += length;
  }
  return Buffer.concat(chunks);
};

/** A terminal or a slow pipe may have nothing yet (EAGAIN), and some end with EOF as an error. */
const readSome = (buffer: Uint8Array): number => {
  for (;;) {
    try {
      return readSync(0, buffer, 0, buffer.length, null);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : '';
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    }
  }
};

/** The first write to a standard stream that failed. */
let lost: { readonly stream: string; readonly code: string | undefined } | undefined;

/** Notes a failed write. Whoever reads the output may stop early (`… | head`): that is no loss, nor is what comes after it. */
const note = (stream: string, error: NodeJS.ErrnoException | null | undefined): void => {
  if (error && error.code !== 'EPIPE' && error.code !== 'ERR_STREAM_DESTROYED') lost ??= { stream, code: error.code };
};
process.stdout.on('error', (error: NodeJS.ErrnoException) => note('standard output', error));
process.stderr.on('error', (error: NodeJS.ErrnoException) => note('standard error', error));

/** Exit code where what was printed is lost; as for a file that could not be written. */
const notWritten = 3;

/** Ends at once when all is written, without waiting for what V8 still compiles in the background. */
const exit = (code: number): void => {
  process.exitCode = code;
  process.stdout.write('', (error) => {
    note('standard output', error);
    process.stderr.write(lostWords(), (failed) => {
      note('standard error', failed);
      process.exit(lost === undefined ? code : Math.max(code, notWritten));
    });
  });
};

const lostWords = (): string => {
  if (lost?.stream !== 'standard output') return '';
  return `roundwright: cannot write standard output: ${lost.code === 'ENOSPC' ? 'the disk is full' : lost.code ?? 'unknown'}\n`;
};

optimiseLater();
void loadMain().run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  terminal: process.stderr.isTTY === true,
  readStdin,
  env: process.env,
}).then(exit);
