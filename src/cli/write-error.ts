/** A file that could not be written, with the reason in plain words. Exit code 3. */
export class WriteError extends Error {
  override readonly name = 'WriteError';
  constructor(
    readonly path: string,
    reason: string,
  ) {
    super(`cannot write ${path}: ${reason}`);
  }
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  ENOTDIR: 'a file stands where a folder is needed',
  EISDIR: 'a folder of that name is in the way',
  ENOTEMPTY: 'a folder of that name is in the way',
  EEXIST: 'something of that name is in the way',
  ENAMETOOLONG: 'the name is too long for this disk',
  ELOOP: 'a link leads back to itself',
  EMFILE: 'too many files are open',
};

/** Does what touches the disk at `path`; a failed system call becomes a `WriteError`. */
export const writing = <T>(path: string, action: () => T): T => {
  try {
    return action();
  } catch (error) {
    throw error instanceof WriteError ? error : writeErrorFrom(path, error);
  }
};

/** The error that a failed system call on `path` means to the user. */
export const writeErrorFrom = (path: string, error: unknown): WriteError => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return new WriteError(path, reasons[code] ?? (error instanceof Error ? error.message : String(error)));
};
