import { UserError } from '../errors/user-error.js';
import { commands } from './commands.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { formatMistakes } from '../errors/format-mistakes.js';
import { parseCommandLine } from './parse-command-line.js';
import { programVersion } from './program-version.js';
import { WriteError } from './write-error.js';

/** Help is set for a screen of this many columns. */
const helpWidth = 100;

const fail = (error: unknown, io: Io): number => {
  if (error instanceof UserError) {
    io.err(formatMistakes(error));
    return exitCodes.wrongUse;
  }
  if (error instanceof WriteError) {
    io.err(`roundwright: ${error.message}\n`);
    return exitCodes.notWritten;
  }
  const told = error instanceof Error ? (io.env['ROUNDWRIGHT_DEBUG'] ? error.stack : error.message) : String(error);
  io.err(`roundwright: a fault of the program, not of the spec: ${told}\nROUNDWRIGHT_DEBUG=1 shows where; please report it with the spec.\n`);
  return exitCodes.fault;
};

/** The whole command: reads the words, runs the command, turns every failure into one message and an exit code. */
export const run = async (words: readonly string[], io: Io): Promise<number> => {
  try {
    const line = await parseCommandLine(words, commands, programVersion, helpWidth);
    if ('command' in line) return await line.command.run(line.given, io);
    io.out(line.text);
    return exitCodes.done;
  } catch (error) {
    return fail(error, io);
  }
};
