import { line } from '../geometry/shapes.js';
import { add, polar, type Point } from '../geometry/point.js';
import { arrow, arrowLength } from './arrow.js';
import type { Item } from './drawing.js';
import type { Font } from './font.js';
import { letter, shape } from './items.js';
import { leader } from './leader.js';
import { clearance, readableTurn } from './readable.js';

/** A radius or diameter to be dimensioned, mm. */
export interface RoundDimensionOptions {
  readonly centre: Point;
  readonly radius: number;
  /** Where on the circle the arrow touches, radians from +x towards +y. */
  readonly angle: number;
  /** With its sign: `R 12 mm`, `Ø 1 3⁄8″`. */
  readonly label: string;
  readonly height?: number;
}

/** The label on a leader outside the circle, its arrow pointing at the centre. */
const outside = ({ centre, radius, angle, label, height = 2.5 }: RoundDimensionOptions): Item[] => leader({
  at: add(centre, polar(angle, radius)), elbow: add(centre, polar(angle, radius + 3 * arrowLength)), label, height,
});

/** A line of lettering above the middle of the line from `a` to `b`, clear of it. */
const above = (a: Point, b: Point, label: string, height: number): Item => {
  const turn = readableTurn(Math.atan2(b.y - a.y, b.x - a.x));
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return letter(add(middle, polar(turn - Math.PI / 2, clearance(height))), label, { height, turn, anchor: 'middle' });
};

/** A radius: line from the centre with an arrow at the arc, the label above it; outside on a leader where it does not fit. */
export const radiusDimension = (options: RoundDimensionOptions, font: Font): Item[] => {
  const { centre, radius, angle, label, height = 2.5 } = options;
  if (font.width(label, height) + 2 * arrowLength > radius) return outside(options);
  const tip = add(centre, polar(angle, radius));
  const back = add(centre, polar(angle, radius - arrowLength));
  return [
    shape('dimension', line(centre, add(centre, polar(angle, radius - arrowLength / 2)))),
    arrow(tip, angle), above(centre, back, label, height),
  ];
};

/** A diameter: line through the centre with two arrows, the label above one half; outside on a leader where it does not fit. */
export const diameterDimension = (options: RoundDimensionOptions, font: Font): Item[] => {
  const { centre, radius, angle, label, height = 2.5 } = options;
  if (font.width(label, height) + 2.5 * arrowLength > radius) return outside(options);
  const end = (side: 1 | -1, length: number): Point => add(centre, polar(angle, side * length));
  return [
    shape('dimension', line(end(-1, radius - arrowLength / 2), end(1, radius - arrowLength / 2))),
    arrow(end(1, radius), angle), arrow(end(-1, radius), angle + Math.PI),
    above(end(1, arrowLength / 2), end(1, radius - arrowLength), label, height),
  ];
};
