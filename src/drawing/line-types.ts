/** What a line means. The meaning is carried by width and dash alone, so that it survives a black-only printer. */
export type LineType =
  | 'edge' | 'saw' | 'bore' | 'centre' | 'hidden' | 'reference' | 'waste' | 'seam' | 'dimension' | 'lettering' | 'mark';

/** How a line type is drawn: pen width and dash lengths, mm (mark, gap, mark, …); no dash means unbroken. */
export interface LineStyle {
  readonly width: number;
  readonly dash: readonly number[];
  readonly meaning: string;
}

/** ISO 128-2 line elements in pen widths: long dash 24, gap 3, dot 0.5, dash 12, wide gap 18. */
const dashed = (width: number): number[] => [12 * width, 3 * width];
/** No. 03 of ISO 128-2: gaps so wide that it is not taken for a centre line beside it. */
const spaced = (width: number): number[] => [12 * width, 18 * width];
const dashDot = (width: number): number[] => [24 * width, 3 * width, 0.5 * width, 3 * width];
const dashTwoDots = (width: number): number[] => [24 * width, 3 * width, 0.5 * width, 3 * width, 0.5 * width, 3 * width];

/**
 * Pen widths of the ISO 128-2 series (0.13 0.18 0.25 0.35 0.5 0.7 mm), narrow : wide = 1 : 2, and its dashes.
 * The true edge is the centre of the line.
 */
export const lineStyles: Readonly<Record<LineType, LineStyle>> = {
  edge: { width: 0.35, dash: [], meaning: 'finished edge' },
  saw: { width: 0.35, dash: dashTwoDots(0.35), meaning: 'saw cut' },
  bore: { width: 0.25, dash: [], meaning: 'bored edge' },
  centre: { width: 0.18, dash: dashDot(0.18), meaning: 'centre line' },
  hidden: { width: 0.25, dash: dashed(0.25), meaning: 'hidden edge' },
  reference: { width: 0.18, dash: [], meaning: 'line to set out by' },
  waste: { width: 0.18, dash: [], meaning: 'waste side' },
  seam: { width: 0.18, dash: spaced(0.18), meaning: 'seam between sheets' },
  dimension: { width: 0.18, dash: [], meaning: 'dimension' },
  lettering: { width: 0.18, dash: [], meaning: 'lettering' },
  mark: { width: 0.18, dash: [], meaning: 'mark' },
};
