import { UserError } from '../errors/user-error.js';
import type { Arguments } from './command.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { formatMistakes } from '../errors/format-mistakes.js';
import { readSpec, type SpecText } from './read-source.js';
import { usageError } from './usage-error.js';

/** What came of the specs of one command line: an exit code for each, and the results of those that went well. */
export interface Outcomes<T> {
  readonly codes: readonly number[];
  readonly results: readonly T[];
  readonly asked: number;
}

/** The exit code of the whole command: the highest. */
export const worst = (codes: readonly number[]): number => Math.max(exitCodes.done, ...codes);

const specsGiven = (given: Arguments): readonly string[] => {
  const specs = [given['spec']].flat().map(String);
  if (specs.filter((spec) => spec === '-').length > 1) throw usageError('standard input can be read only once', { allowed: 'one -' });
  return specs;
};

/** Works on each spec in turn. A spec with mistakes is told on standard error and the next one is worked on all the same. */
export const eachSpec = async <T>(
  given: Arguments, io: Io, work: (spec: SpecText, asked: number) => { result: T; code: number } | Promise<{ result: T; code: number }>,
): Promise<Outcomes<T>> => {
  const specs = specsGiven(given);
  const codes: number[] = [];
  const results: T[] = [];
  for (const file of specs) {
    try {
      const { result, code } = await work(readSpec(file, io), specs.length);
      results.push(result);
      codes.push(code);
    } catch (error) {
      // A mistake in the use of the command has no file: it is the same for every spec.
      if (!(error instanceof UserError) || error.file === undefined) throw error;
      io.err(formatMistakes(error));
      codes.push(exitCodes.wrongUse);
    }
  }
  return { codes, results, asked: specs.length };
};
