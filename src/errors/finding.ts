/** `stop`: nothing is drawn for the jig. `warn`: drawn, with the warning on its set-up sheet. `note`: worth knowing. */
export type Severity = 'stop' | 'warn' | 'note';

/** What a check found in one jig. Exactly what `check --json` prints. */
export interface Finding {
  readonly jig: string;
  /** kebab-case, stable: `wing-thin`, `axes-too-far-apart`. */
  readonly code: string;
  readonly severity: Severity;
  /** The figure found and the limit it was held against: mm, degrees or a ratio, as `message` says. */
  readonly measured: number;
  readonly limit: number;
  /** What is so, with figures, in a maker's words. */
  readonly message: string;
  /** What would do, with the nearest figure that does. */
  readonly remedy: string;
}
