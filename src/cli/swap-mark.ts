import { randomBytes } from 'node:crypto';
import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/** Stands in a folder while the files of a draw are put in place, and stays there when that is cut short. */
export const markName = 'unfinished-draw.txt';

/** A mark that has not changed for so long, ms, is of a run that was ended: files are put in place in far less. */
const longestSwap = 5000;
const pause = 100;

const words = (run: string): string => `A draw is putting its files in place here, or was ended while it did.
If this file stays, files of two draws lie side by side: draw again before you print.

run ${run}
`;

const textOf = (path: string): string | undefined => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
};

/** Sets the mark where none stands; false where one does. */
const setNew = (path: string, text: string): boolean => {
  try {
    writeFileSync(path, text, { flag: 'wx' });
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
};

/** Puts our mark over one that an ended run left; false where another run did so at the same time and came last. */
const takeOver = async (path: string, text: string, run: string): Promise<boolean> => {
  const ours = `${path}.${run}`;
  writeFileSync(ours, text, { flag: 'wx' });
  renameSync(ours, path);
  await sleep(2 * pause);
  return textOf(path) === text;
};

/**
 * Sets the mark in a folder and gives what takes it away again. Waits while another run has its own there, for two runs that
 * put files in place at once would mix them; a mark that stands unchanged for five seconds is taken over.
 */
export const setMark = async (folder: string): Promise<() => void> => {
  const path = join(folder, markName);
  const run = randomBytes(12).toString('hex');
  const text = words(run);
  let seen: string | undefined;
  let waited = 0;
  while (!setNew(path, text)) {
    const there = textOf(path);
    waited = there === seen ? waited + pause : 0;
    seen = there;
    if (waited >= longestSwap && (await takeOver(path, text, run))) break;
    await sleep(pause);
  }
  return () => {
    if (textOf(path) === text) rmSync(path, { force: true });
  };
};
