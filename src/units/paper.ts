/** A paper size, mm, exact, upright (width ≤ height). */
export interface Paper {
  /** `letter`, `a4`, …, or `280x430` for a size of the user's own. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** ISO 216 (A sizes) and ANSI/ASME Y14.1 (letter, tabloid = A, B); legal 8.5 × 14 in from memory. Exact. */
export const papers: Readonly<Record<string, Paper>> = {
  letter: { name: 'letter', width: 8.5 * 25.4, height: 11 * 25.4 },
  legal: { name: 'legal', width: 8.5 * 25.4, height: 14 * 25.4 },
  tabloid: { name: 'tabloid', width: 11 * 25.4, height: 17 * 25.4 },
  a4: { name: 'a4', width: 210, height: 297 },
  a3: { name: 'a3', width: 297, height: 420 },
  a2: { name: 'a2', width: 420, height: 594 },
};
