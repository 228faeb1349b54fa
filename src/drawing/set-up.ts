import type { Words } from '../units/quantity.js';
import type { Drawing } from './drawing.js';

/** One line of a set-up sheet's table of numbers, found again by its code and never by its words. */
export interface Figure {
  /** kebab-case, unique in its set-up: `fence-distance`. */
  readonly code: string;
  readonly label: Words;
  readonly value: Words;
}

/** A column of a table: its code, and its head. */
export interface FigureColumn {
  readonly code: string;
  readonly head: string;
}

/** A table of figures on a set-up sheet. */
export interface FigureTable {
  /** kebab-case, unique in its set-up: `ordinates`. */
  readonly code: string;
  readonly heading: Words;
  /** What its figures count from, in a sentence under the heading. */
  readonly note?: Words;
  readonly columns: readonly FigureColumn[];
  /** A cell for each column. */
  readonly rows: readonly (readonly Words[])[];
  /** Printed only where it takes no further sheet. */
  readonly ifItFits?: boolean;
}

/** One thing that is done, with its figures. */
export interface Step {
  /** kebab-case, unique in its set-up: `saw-first-cut`. */
  readonly code: string;
  readonly words: Words;
}

/** What is set and done at one machine: becomes a page of its own at the back of the set. */
export interface SetUp {
  /** The operation, by which findings reach this page: kebab-case, `saw-v`. */
  readonly code: string;
  /** The end of the branch and the parts of the drawing that are worked here, where an operation has several pages. */
  readonly end?: 'near' | 'far';
  readonly parts?: readonly string[];
  /** What the page is called. */
  readonly operation: string;
  readonly machine: string;
  readonly picture: Drawing;
  /** Whether the picture is in true size; a picture that the page makes smaller is said not to be, whatever stands here. */
  readonly pictureIs: 'true-size' | 'not-to-scale';
  readonly pictureNote: Words;
  readonly numbers: readonly Figure[];
  readonly tables: readonly FigureTable[];
  /** What is done, in order. What the check found is no step: the sheet prints it above them. */
  readonly steps: readonly Step[];
  readonly cautions: readonly string[];
}
