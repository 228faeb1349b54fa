import { line } from '../geometry/shapes.js';
import { add, dot, polar, subtract, type Point } from '../geometry/point.js';
import { arrow, arrowLength } from './arrow.js';
import type { Item } from './drawing.js';
import type { Font } from './font.js';
import { letter, shape } from './items.js';
import { clearance, readableTurn } from './readable.js';

/** What a linear dimension says and where it stands, mm. */
export interface DimensionOptions {
  readonly from: Point;
  readonly to: Point;
  /** From `from` to the dimension line, square to it: positive to the left of the way from → to (above, for a way to the right). */
  readonly offset: number;
  readonly label: string;
  /** Direction measured along, radians; from → to unless given (0: only the horizontal distance, π/2: only the vertical). */
  readonly along?: number;
  /** Height of capitals. */
  readonly height?: number;
  /** Gap between a point measured and its extension line. */
  readonly gap?: number;
}

/** Extension lines run this far past the dimension line, mm. */
const beyond = 1.5;

/** A frame along the dimension line that reads the right way up: s runs with the lettering, h upwards from the dimension line. */
const readingFrame = ({ from, to, offset, along }: DimensionOptions) => {
  const heading = along ?? Math.atan2(to.y - from.y, to.x - from.x);
  const turn = readableTurn(heading);
  const x = polar(turn);
  const up = polar(turn - Math.PI / 2);
  const way = polar(heading);
  const origin = add(from, { x: way.y * offset, y: -way.x * offset });
  const at = (s: number, h: number): Point =>
    ({ x: origin.x + x.x * s + up.x * h, y: origin.y + x.y * s + up.y * h });
  const place = (p: Point) => ({ s: dot(subtract(p, origin), x), h: dot(subtract(p, origin), up) });
  const [first, last] = [place(from), place(to)].sort((a, b) => a.s - b.s) as [{ s: number; h: number }, { s: number; h: number }];
  return { turn, at, first, last };
};

/**
 * A linear dimension (after ISO 129-1): extension lines with a gap, dimension line with arrows, the label above it and
 * parallel to it, read from the bottom or the right. Where the arrows do not fit they point in from outside; where the label
 * does not fit between the extension lines it stands outside, over the line drawn on. The label touches no line of its own.
 */
export const dimension = (options: DimensionOptions, font: Font): Item[] => {
  const { label, height = 2.5, gap = 1 } = options;
  const { turn, at, first, last } = readingFrame(options);
  const length = last.s - first.s;
  const width = font.width(label, height);
  const inside = length >= 3 * arrowLength;
  const fits = length >= width + 1.5;
  const tail = 2 * arrowLength;

  const extensions = [first, last].flatMap(({ s, h }): Item[] =>
    Math.abs(h) <= gap ? [] : [shape('dimension', line(at(s, h - Math.sign(h) * gap), at(s, -Math.sign(h) * beyond)))]);
  const start = inside ? first.s : first.s - tail;
  const end = fits ? last.s + (inside ? 0 : tail) : last.s + (inside ? 0 : tail) + width + 1.5;
  const heads = [arrow(at(first.s, 0), inside ? turn + Math.PI : turn), arrow(at(last.s, 0), inside ? turn : turn + Math.PI)];
  const rise = clearance(height);
  const words = fits
    ? letter(at((first.s + last.s) / 2, rise), label, { height, turn, anchor: 'middle' })
    : letter(at(last.s + (inside ? 1 : tail), rise), label, { height, turn });
  // Shaft short of a tip that it would blunt.
  const trim = inside ? arrowLength / 2 : 0;
  return [...extensions, shape('dimension', line(at(start + trim, 0), at(end - (fits ? trim : 0), 0))), ...heads, words];
};
