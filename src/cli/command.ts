import type { Options } from 'yargs';
import type { Io } from './io.js';

/** What yargs made of the words after the command: options by name, and the positionals by theirs. */
export type Arguments = Readonly<Record<string, unknown>>;

/** One command of the CLI. `run` loads what the command needs, so that no other command pays for it. */
export interface Command {
  readonly name: string;
  /** The name with its positionals, in yargs' notation: `draw <spec..>`. */
  readonly usage: string;
  readonly about: string;
  readonly options: Readonly<Record<string, Options>>;
  /** Command lines that teach, each with what it does. */
  readonly examples: readonly (readonly [line: string, about: string])[];
  readonly run: (given: Arguments, io: Io) => Promise<number>;
}
