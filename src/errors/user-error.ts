/** One mistake in what the user wrote. */
export interface Mistake {
  /** kebab-case, stable: `unknown-key`, `not-a-length`. */
  readonly code: string;
  /** The file, where it is not the error's own (a shop file that the spec names). */
  readonly file?: string;
  /** Where in the spec, e.g. `jigs[0].angle`; empty for the whole file. */
  readonly path: string;
  /** Counted from 1; absent where there is no file (a command-line option). */
  readonly line?: number;
  readonly column?: number;
  /** The source line, to show with a pointer under the column. */
  readonly source?: string;
  /** What is wrong, without figures of position; reads on from the path (`is missing`) where there is one. */
  readonly message: string;
  readonly got?: string;
  /** What would do. */
  readonly allowed?: string;
  /** The nearest thing that would do. */
  readonly nearest?: string;
}

/** Path and message as one sentence: `jigs[0].angle is missing`, `rounds.post: “x” is not a unit of length`. */
export const mistakeSentence = ({ path, message }: Mistake): string =>
  path === '' ? message : `${path}${/^(?:is|are|has|holds|names|makes|must|cannot|reads|does|comes|needs|would|leaves|stands|\() ?/.test(message) ? '' : ':'} ${message}`;

/** All the mistakes found in one file or one command line. Exit code 2. */
export class UserError extends Error {
  override readonly name = 'UserError';
  constructor(
    /** The file as the user named it; undefined for the command line. */
    readonly file: string | undefined,
    readonly mistakes: readonly Mistake[],
  ) {
    super(mistakes.map(mistakeSentence).join('\n'));
  }
}
