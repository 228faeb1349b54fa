import type { Box } from '../geometry/box.js';
import type { Path } from '../geometry/path.js';
import type { Point } from '../geometry/point.js';
import type { LineType } from './line-types.js';
import type { SetUp } from './set-up.js';

/** A stroked or filled path. `part` names a shape of meaning; other programs find shapes by it. */
export interface Shape {
  readonly kind: 'shape';
  readonly line: LineType;
  readonly path: Path;
  readonly part?: string;
  /** Filled black and not stroked: arrowheads and the blocks of a rule, nothing larger. */
  readonly filled?: boolean;
  /** How far along the dash pattern the pen already is at the start, mm; set where a tile cuts a dashed line. */
  readonly phase?: number;
}

/** A line of lettering. `\u2044` (⁄) between digits sets a real fraction. */
export interface Lettering {
  readonly kind: 'lettering';
  /** On the base line. */
  readonly at: Point;
  readonly text: string;
  /** Height of the capitals, mm (ISO 3098 heights: 1.8 2.5 3.5 5 7 10). */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Turn about `at`, radians from +x towards +y (clockwise on the page); −π/2 reads upwards. */
  readonly turn: number;
  readonly part?: string;
  /** Nothing of the lettering shows outside this box; set where a tile cuts through it. */
  readonly clip?: Box;
}

/** What a drawing is made of. */
export type Item = Shape | Lettering;

/** A place that seams between sheets should keep out of, or (a land) one that they should seek. */
export interface Zone {
  readonly box: Box;
  readonly why: string;
}

/** A true-size pattern in mm: x right, y down, any origin. */
export interface Drawing {
  /** Short, unique in its jig: `wrap`, `top`, `end-section`. */
  readonly name: string;
  /** What it shows, said after its jig's name and without it: `wrap-round template`. */
  readonly title: string;
  readonly items: readonly Item[];
  /** No template but a picture that a set-up shows too: on the jig's own canvas, and on the sheets with that set-up alone. */
  readonly isPicture?: boolean;
  /** Must stay on one sheet wherever a sheet can hold it (a cope is never split). */
  readonly whole: boolean;
  /** The one point from which stations are measured; the left end of the spine. */
  readonly datum: Point;
  /** Where the sheets draw the line that runs through the whole length: along x at the datum's height, unless absent. */
  readonly spine: boolean;
  readonly keepClear: readonly Zone[];
  readonly lands: readonly Zone[];
}

/** Everything that a jig puts on paper. */
export interface JigDrawing {
  readonly jig: string;
  readonly kind: string;
  readonly title: string;
  readonly patterns: readonly Drawing[];
  readonly setUps: readonly SetUp[];
  /** Measured diameters assumed, in words, for every sheet that depends on them. */
  readonly assumed: readonly string[];
  /** The jig's cautions in their short form, for the strip of its pattern sheets. */
  readonly cautions: readonly string[];
}
