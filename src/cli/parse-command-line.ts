import yargs, { type Argv } from 'yargs';
import { quote } from '../errors/quote.js';
import { nearestOf } from './arguments.js';
import type { Arguments, Command } from './command.js';
import { usageError } from './usage-error.js';

/** Either a command with what it was given, or text that answers `--help` or `--version`. */
export type CommandLine = { readonly command: Command; readonly given: Arguments } | { readonly text: string };

/** yargs reads numbers and dots out of words unless told not to: here `1-3/8` and `a.b` are words. */
const plainWords = {
  'camel-case-expansion': false, 'dot-notation': false, 'parse-numbers': false, 'parse-positional-numbers': false, 'boolean-negation': false,
};

/**
 * yargs drops a lone `-` from a list of positionals, and what stands behind `--`. Both go through behind a sign that no command line can hold, and
 * come back without it.
 */
const standIn = '\u0000';
const hideDashes = (words: readonly string[]): string[] => {
  const end = words.indexOf('--');
  return words.flatMap((word, i) => (end >= 0 && i >= end ? (i === end ? [] : [`${standIn}${word}`]) : [word === '-' ? `${standIn}-` : word]));
};
const showDash = (value: unknown): unknown => (Array.isArray(value) ? value.map(showDash) : typeof value === 'string' && value.startsWith(standIn) ? value.slice(1) : value);
const showDashes = (given: Arguments): Arguments => Object.fromEntries(Object.entries(given).map(([name, value]) => [name, showDash(value)]));

const dashed = (name: string): string => (name.length > 1 ? `--${name}` : `-${name}`);

/** Options are looked at before yargs sees them: an unknown one would swallow the word behind it. */
const checkOptions = (words: readonly string[], command: Command): void => {
  const own = Object.entries(command.options).flatMap(([name, { alias }]) => [name, ...[alias ?? []].flat()]);
  const known = [...own, 'help', 'h', 'version'].map(dashed);
  const end = words.indexOf('--');
  for (const word of end < 0 ? words : words.slice(0, end)) {
    const option = /^--?[a-zA-Z][^=]*/.exec(word)?.[0];
    if (option === undefined || known.includes(option)) continue;
    throw usageError(`${command.name} has no option ${quote(option)}`, { allowed: own.map(dashed).join(' '), ...nearestOf(option, known) });
  }
};

const checkPositionals = ({ usage, name }: Command, given: Arguments): void => {
  const over = [given['_'] ?? []].flat();
  if (over.length === 0) return;
  throw usageError(`${name} does not know what to do with ${quote(String(over[0]))}`, { allowed: `roundwright ${usage}; a value with a space in it needs quotes` });
};

/** yargs' own words for what is missing, in ours. */
const failure = (message: string | undefined, error: Error | undefined, command: Command | undefined): Error => {
  const said = message ?? error?.message ?? '';
  const bare = /^Not enough arguments following: (.+)$/.exec(said)?.[1];
  if (bare !== undefined) return usageError(`${dashed(bare)} needs a value behind it`);
  if (command !== undefined && said.startsWith('Not enough non-option arguments')) {
    return usageError(`${command.name} needs a ${/<([a-z]+)/.exec(command.usage)?.[1] ?? 'word'}`, { allowed: command.examples[0]?.[0] ?? command.usage });
  }
  // An error with a name of its own comes from the command itself, not from yargs.
  return error !== undefined && error.name !== 'YError' ? error : usageError(said);
};

const describe = (parser: Argv, command: Command): Argv => {
  const described = parser.options(command.options);
  return command.examples.reduce((so, [line, about]) => so.example(line, about), described);
};

const noCommand = (commands: readonly Command[], word: string | undefined): never => {
  const names = commands.map(({ name }) => name);
  if (word === undefined) throw usageError('no command given', { allowed: `one of ${names.join(', ')}; roundwright --help shows examples` });
  throw usageError(`there is no command ${quote(word)}`, { allowed: names.join(', '), ...nearestOf(word, names) });
};

const parser = (words: readonly string[], version: string, width: number): Argv =>
  yargs([...words]).parserConfiguration(plainWords).locale('en').version(version).help().alias('help', 'h').wrap(width).exitProcess(false).showHelpOnFail(false);

/** What yargs would print: the answer to `--help` and `--version`. Empty where it has nothing to say. */
const parse = async (ready: Argv, words: readonly string[]): Promise<string> => {
  let text = '';
  await ready.parseAsync([...words], {}, (_error: unknown, _given: unknown, output: string) => { text = output; });
  return text;
};

/** No command's own words: only `--help` and `--version` answer anything. */
const parseBare = async (words: readonly string[], commands: readonly Command[], start: Argv): Promise<CommandLine> => {
  const intro = 'roundwright <command>\n\nTrue-size printed templates, jigs and checks for furniture built from round stock.';
  const ready = commands.reduce((so, { usage, about }) => so.command(usage, about), start.scriptName('roundwright').usage(intro))
    .epilogue('Each command has its own --help with examples.');
  const word = firstWord(words);
  const text = word === undefined ? await parse(ready, words) : '';
  return text === '' ? noCommand(commands, word) : { text: `${text}\n` };
};

const firstWord = (words: readonly string[]): string | undefined => words.find((word) => !word.startsWith('-'));

/**
 * Reads the words behind `roundwright`. Refuses unknown commands and options with the nearest that there is, missing
 * positionals, and an option given without its value.
 */
export const parseCommandLine = async (words: readonly string[], commands: readonly Command[], version: string, width: number): Promise<CommandLine> => {
  const command = commands.find(({ name }) => name === firstWord(words));
  if (command === undefined) return parseBare(words, commands, parser(words, version, width));
  checkOptions(words, command);
  const own = hideDashes(words.filter((_, index) => index !== words.indexOf(command.name)));
  let given: Arguments | undefined;
  // As yargs' default command: for a named one it sets the whole help text on every run, a tenth of a small draw's time.
  const ready = parser(own, version, width).scriptName(`roundwright ${command.name}`)
    .fail((message, error) => { throw failure(message, error, command); })
    .command(command.usage.replace(command.name, '$0'), command.about, (its) => describe(its, command), (read) => { given = showDashes(read); });
  const text = await parse(ready, own);
  if (text !== '') return { text: `${text}\n` };
  if (given === undefined) throw usageError(`${command.name} was not understood`, { allowed: `roundwright ${command.usage}` });
  checkPositionals(command, given);
  return { command, given };
};
