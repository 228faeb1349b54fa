/** What the process ends with; the highest of several specs counts. */
export const exitCodes = {
  done: 0,
  /** A finding of severity stop: nothing is drawn for that jig, the rest is. */
  stopped: 1,
  /** Wrong use or spec. */
  wrongUse: 2,
  /** A file could not be written. */
  notWritten: 3,
  /** A fault of the program itself (EX_SOFTWARE of sysexits.h). */
  fault: 70,
} as const;
