/** What a command may touch of the outside besides files: everything it prints, and where it reads a piped spec. */
export interface Io {
  /** Standard output: results only, so that it can be piped. */
  readonly out: (text: string) => void;
  /** Standard error: errors, warnings, progress. */
  readonly err: (text: string) => void;
  /** Whether standard error is a terminal: progress shows only there. */
  readonly terminal: boolean;
  /** Standard input to its end, at most `limit` bytes and one more, so that the reader can tell that there was more. */
  readonly readStdin: (limit: number) => Uint8Array;
  readonly env: Readonly<Record<string, string | undefined>>;
}
