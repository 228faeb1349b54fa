/** `stop`: nothing is drawn for the jig. `warn`: drawn, with the warning on its set-up sheet. `note`: worth knowing. */
export type Severity = 'stop' | 'warn' | 'note';

/** What a finding is about: by these codes, never by its words, it finds its sheet. */
export interface About {
  readonly jig: string;
  /** The operation of the jig that it concerns: the `code` of the set-up sheet on which it is printed. */
  readonly operation: string;
  /** The end of the branch. */
  readonly end?: 'near' | 'far';
  /** Parts of the drawing: `slot-3`, `hole-1`. */
  readonly parts?: readonly string[];
  /** The round, by its name in the spec. */
  readonly round?: string;
}

/** One way to clear a finding: this field of the spec, set to this figure as the remedy prints it, and nothing else changed. */
export interface Cure {
  /** Path from the jig's own entry (`block.width`), or `rounds.` and a name. */
  readonly field: string;
  /** mm, degrees or a count. */
  readonly value: number;
  readonly unit: 'mm' | 'degrees' | 'count';
}

/** What a check found in one jig. Exactly what `check --json` prints. */
export interface Finding {
  readonly jig: string;
  /** kebab-case, stable: `wing-thin`, `axes-too-far-apart`. */
  readonly code: string;
  readonly severity: Severity;
  /** The figure found and the limit it was held against: mm, degrees or a ratio, as `message` says. */
  readonly measured: number;
  readonly limit: number;
  readonly about: About;
  /** What is so, with figures, in a maker's words. */
  readonly message: string;
  /** What would do, with the nearest figure that does. */
  readonly remedy: string;
  /** The remedy's figures as fields of the spec, each alone enough to clear the finding; empty where a remedy is no figure. */
  readonly would: readonly Cure[];
}
