import { UserError, type Mistake } from '../errors/user-error.js';
import type { Arguments } from './command.js';
import { exitCodes } from './exit-codes.js';
import type { Io } from './io.js';
import { formatMistakes } from '../errors/format-mistakes.js';
import { readSpec, type SpecText } from './read-source.js';
import { placeInSpec } from '../spec/place-in-spec.js';
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

/** Options that say what a spec says of its sheets, by the field that they stand for. */
const optionFor: Readonly<Record<string, string>> = { paper: 'paper', 'sheets.margins': 'margins', 'sheets.overlap': 'overlap', 'sheets.turn': 'turn' };

/** What the sheets refuse: the option's fault where one was given; else the spec's, at its line where it says so. */
const placed = (error: UserError, spec: SpecText, given: Arguments): UserError => {
  const isOption = ({ path }: Mistake): boolean => given[optionFor[path] ?? ''] !== undefined;
  const named = error.mistakes.map((mistake) => (isOption(mistake) && mistake.line === undefined ? { ...mistake, path: `--${optionFor[mistake.path]!}` } : mistake));
  return new UserError(spec.file, placeInSpec(named, spec));
};

const placing = async <T>(given: Arguments, spec: SpecText, work: () => T | Promise<T>): Promise<T> => {
  try {
    return await work();
  } catch (error) {
    throw error instanceof UserError && error.file === spec.file ? placed(error, spec, given) : error;
  }
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
      const spec = readSpec(file, io);
      const { result, code } = await placing(given, spec, () => work(spec, specs.length));
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
