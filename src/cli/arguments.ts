import { nearest } from '../errors/nearest.js';
import { quote } from '../errors/quote.js';
import { parseLength } from '../units/parse-length.js';
import type { Units } from '../units/units.js';
import type { Arguments } from './command.js';
import { usageError } from './usage-error.js';

/** The text given for an option, or undefined where it is absent. Refuses an option without its value, or given twice. */
export const textOption = (given: Arguments, name: string): string | undefined => {
  const value = given[name];
  if (value === undefined) return undefined;
  if (Array.isArray(value)) throw usageError(`--${name} is given ${value.length} times`, { allowed: 'once' });
  if (typeof value !== 'string' || value.trim() === '') throw usageError(`--${name} needs a value behind it`);
  return value.trim();
};

/** The words given to an option that may be repeated or carry a list with commas. */
export const listOption = (given: Arguments, name: string): readonly string[] | undefined => {
  const value = given[name];
  if (value === undefined) return undefined;
  const words = [value].flat().flatMap((one) => String(one).split(',')).map((word) => word.trim()).filter((word) => word !== '');
  if (words.length === 0) throw usageError(`--${name} needs a value behind it`);
  return words;
};

/** An option that is one of a few words. */
export const choiceOption = <const T extends string>(given: Arguments, name: string, choices: readonly T[]): T | undefined => {
  const text = textOption(given, name);
  return text === undefined ? undefined : chosen(text, `--${name}`, choices);
};

/** One of a few words, or an error that offers the nearest. */
export const chosen = <const T extends string>(text: string, what: string, choices: readonly T[]): T => {
  const found = choices.find((choice) => choice === text.toLowerCase());
  if (found !== undefined) return found;
  throw usageError(`${what}: there is no ${quote(text)}`, { allowed: choices.join(', '), ...nearestOf(text, choices) });
};

/** The `nearest` of a mistake, where there is one. */
export const nearestOf = (text: string, names: Iterable<string>): { readonly nearest?: string } => {
  const name = nearest(text, names);
  return name === undefined ? {} : { nearest: name };
};

/** A length in any of the forms of a spec; a bare number is in `units`. mm. */
export const lengthOption = (given: Arguments, name: string, units: Units): number | undefined => {
  const text = textOption(given, name);
  return text === undefined ? undefined : lengthFrom(text, `--${name}`, units);
};

/** A length from a word of the command line, mm. Refuses what is no length and what is below 0. */
export const lengthFrom = (text: string, what: string, units: Units): number => {
  const read = parseLength(text, units);
  if ('refusal' in read) {
    const { message, allowed, nearest: likely } = read.refusal;
    throw usageError(`${what} ${quote(text)}: ${message}`, { allowed, ...(likely === undefined ? {} : { nearest: likely }) });
  }
  if (read.value < 0) throw usageError(`${what} ${quote(text)}: a length below nothing`, { allowed: '0 or more' });
  return read.value;
};
