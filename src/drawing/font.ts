import type { Path } from '../geometry/path.js';

/** One glyph of a line of lettering as it is set. */
export interface Glyph {
  /** Index in the font file. */
  readonly id: number;
  /** The character it stands for, to be read back from a PDF. */
  readonly text: string;
  /** How far it moves the pen, in ems. */
  readonly advance: number;
}

/** The one embedded font, seen from the drawing side: it measures and, for SVG, outlines. Made by `loadFont`. */
export interface Font {
  /** PostScript name, for the PDF's font dictionary. */
  readonly name: string;
  /** The font file's bytes, to embed. */
  readonly bytes: Uint8Array;
  /** Ratio of the height of capitals to the em. */
  readonly capHeight: number;
  /**
   * The line as set, left to right: cleaned (`cleanText`), digits about ⁄ as a real fraction, U+FFFD for what the font
   * lacks. The one place where text becomes glyphs, so that measure, SVG outlines and PDF text cannot differ.
   */
  readonly glyphs: (text: string) => readonly Glyph[];
  /** Width in mm of a line of lettering with capitals `height` mm high; fractions (⁄ between digits) counted as set. */
  readonly width: (text: string, height: number) => number;
  /** Outlines of one glyph at the origin on the base line, y down, in ems; quadratic curves raised to cubics exactly. */
  readonly outline: (id: number) => readonly Path[];
  /** Outlines of the line at the origin on the base line, y down, mm; quadratic curves raised to cubics exactly. */
  readonly outlines: (text: string, height: number) => readonly Path[];
}
