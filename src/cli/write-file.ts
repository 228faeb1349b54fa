import { closeSync, lstatSync, mkdirSync, openSync, renameSync, rmSync, statSync, writeSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { newPartName } from './left-over.js';
import { WriteError, writeErrorFrom, writing } from './write-error.js';

const writeAll = (handle: number, bytes: Uint8Array): void => {
  for (let done = 0; done < bytes.length;) done += writeSync(handle, bytes, done);
};

/** A temporary file beside the target, so that the rename stays on one disk; `wx`: never through a link that is already there. */
const writeTemporary = (path: string, bytes: Uint8Array): string => {
  const temporary = join(dirname(path), newPartName());
  const handle = openSync(temporary, 'wx', 0o666);
  try {
    writeAll(handle, bytes);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  } finally {
    closeSync(handle);
  }
  return temporary;
};

/**
 * Writes a file whole or not at all: a temporary file in the same folder, then a rename. A link in the file's place is
 * replaced, never followed. Refuses with a `WriteError` and leaves what was there as it was.
 */
export const writeFile = (path: string, bytes: Uint8Array): void => {
  let temporary: string | undefined;
  try {
    temporary = writeTemporary(path, bytes);
    renameSync(temporary, path);
  } catch (error) {
    if (temporary !== undefined) rmSync(temporary, { force: true });
    throw writeErrorFrom(path, error);
  }
};

/** One folder after the other: node's own recursive mkdir tries for ever below /proc, where the parent stands but takes nothing. */
const makeEach = (path: string): void => {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isDirectory() === true) return;
  // What stands there is no folder. Below a file newer versions of Node find nothing, where Node 20 fails with the same code.
  if (there !== undefined) throw Object.assign(new Error('not a folder'), { code: 'ENOTDIR' });
  if (dirname(path) !== path) makeEach(dirname(path));
  mkdirSync(path);
};

/** Makes the folder that the user named, and those above it. It may be a link: it is the user's own. */
export const makeFolder = (path: string): void => writing(path, () => makeEach(resolve(path)));

/** Makes a folder of our own inside the user's; a link there would lead out of the folder that the user named, so it is refused. */
export const makeInnerFolder = (folder: string, name: string): string => {
  const path = join(folder, name);
  if (lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink()) throw new WriteError(path, 'it is a link that leads elsewhere');
  makeFolder(path);
  return path;
};
