import type { Path } from '../geometry/path.js';

/** The one embedded font, seen from the drawing side: it measures and, for SVG, outlines. Made by `loadFont`. */
export interface Font {
  /** The font file's bytes, to embed. */
  readonly bytes: Uint8Array;
  /** Ratio of the height of capitals to the em. */
  readonly capHeight: number;
  /** Width in mm of a line of lettering with capitals `height` mm high; fractions (⁄ between digits) counted as set. */
  readonly width: (text: string, height: number) => number;
  /** Outlines of the line at the origin on the base line, y down, mm; quadratic curves raised to cubics exactly. */
  readonly outlines: (text: string, height: number) => readonly Path[];
}
