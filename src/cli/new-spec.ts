import { kinds } from '../jigs/index.js';
import { chosen } from './arguments.js';
import type { Arguments } from './command.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';

/** `new KIND`: a commented starter spec on standard output. It writes no file: `> my-piece.yaml` does. */
export const newSpec = async (given: Arguments, io: Io): Promise<number> => {
  const name = chosen(String(given['kind']), 'new', Object.keys(kinds));
  io.out(kinds[name]!.starter);
  return exitCodes.done;
};
