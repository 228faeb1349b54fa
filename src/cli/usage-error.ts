import { UserError } from '../errors/user-error.js';

/** A mistake on the command line: what is wrong, and what would do. Exit code 2. */
export const usageError = (message: string, help: { readonly allowed?: string; readonly nearest?: string } = {}): UserError =>
  new UserError(undefined, [{ code: 'wrong-use', path: '', message, ...help }]);
