import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { quote } from '../errors/quote.js';
import { UserError } from '../errors/user-error.js';
import type { Io } from './io.js';

/** The longest spec that is read, bytes: 1 MiB. A hand-written piece has a few thousand. */
export const longestSpec = 1024 * 1024;

/** A spec's text and the name that errors give it: the path as the user typed it, `-` for standard input. */
export interface SpecText {
  readonly file: string;
  readonly text: string;
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file', EACCES: 'no permission', EPERM: 'no permission', EISDIR: 'it is a folder, not a file', ENOTDIR: 'its folder is a file',
  ENXIO: 'it is no regular file',
  ELOOP: 'a link leads back to itself', ENAMETOOLONG: 'the name is too long',
};

/** Why a file could not be read, in plain words. */
export const readReason = (error: unknown): string => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
};

const refuse = (file: string, code: string, message: string, allowed?: string): UserError =>
  new UserError(file, [{ code, path: '', message, ...(allowed === undefined ? {} : { allowed }) }]);

/** At most one byte more than the limit: a device or a pipe may have no end. `regular`: nothing but a file of a disk, which no reader waits for. */
const readAtMost = (file: string, limit: number, regular = false): Uint8Array => {
  const handle = openSync(file, regular ? constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) : 'r');
  try {
    const sort = fstatSync(handle);
    if (sort.isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
    if (regular && !sort.isFile()) throw Object.assign(new Error('no file'), { code: 'ENXIO' });
    const buffer = Buffer.alloc(limit + 1);
    let length = 0;
    for (let more = 1; more > 0 && length <= limit; length += more) more = readSync(handle, buffer, length, limit + 1 - length, null);
    return buffer.subarray(0, length);
  } finally {
    closeSync(handle);
  }
};

const bytesOf = (file: string, io: Io): Uint8Array => {
  try {
    return file === '-' ? io.readStdin(longestSpec) : readAtMost(file, longestSpec);
  } catch (error) {
    throw refuse(file, 'cannot-read', `cannot be read: ${readReason(error)}`);
  }
};

/** Reads a spec from a file, or from standard input for `-`. Refuses what is not there, over 1 MiB, or not UTF-8 text. */
export const readSpec = (file: string, io: Io): SpecText => {
  const bytes = bytesOf(file, io);
  if (bytes.length > longestSpec) throw refuse(file, 'too-long', 'is longer than a spec can be', 'at most 1 MiB');
  try {
    return { file, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    throw refuse(file, 'not-text', `${quote(file)} is not text`, 'a YAML file in UTF-8');
  }
};

/**
 * The text of a regular file of at most `limit` bytes, in UTF-8: what the program opens by a name that it was told, be it in a spec. The
 * reason for a failure is in the error's message, in plain words.
 */
export const readRegularText = (path: string, limit: number): string => {
  try {
    const bytes = readAtMost(path, limit, true);
    if (bytes.length > limit) throw new Error(`it is longer than ${limit / 1024} KiB`);
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw new Error(error instanceof TypeError ? 'it is not text in UTF-8' : readReason(error), { cause: error });
  }
};

/** Reads the shop file that a spec names; a failure as `readRegularText` has it. */
export const readShopFile = (path: string): string => readRegularText(path, longestSpec);
