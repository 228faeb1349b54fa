/** A paper size, mm, exact, upright (width ≤ height). */
export interface Paper {
  /** `letter`, `a4`, …, or `280x430` for a size of the user's own. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** ISO 216 (A sizes) and ANSI/ASME Y14.1 (letter, tabloid = A, B); legal 8.5 × 14 in from memory. Exact. */
export const papers: Readonly<Record<string, Paper>> = {
  letter: { name: 'letter', width: 215.9, height: 279.4 },
  legal: { name: 'legal', width: 215.9, height: 355.6 },
  tabloid: { name: 'tabloid', width: 279.4, height: 431.8 },
  a4: { name: 'a4', width: 210, height: 297 },
  a3: { name: 'a3', width: 297, height: 420 },
  a2: { name: 'a2', width: 420, height: 594 },
};
