import { arcPath, circularArc, line } from '../geometry/shapes.js';
import { add, polar, type Point } from '../geometry/point.js';
import { arrow, arrowLength } from './arrow.js';
import type { Item } from './drawing.js';
import type { Font } from './font.js';
import { letter, shape } from './items.js';

/** An angle to be dimensioned about `centre`, between two directions in radians from +x towards +y; mm. */
export interface AngleDimensionOptions {
  readonly centre: Point;
  readonly radius: number;
  readonly from: number;
  /** Greater than `from`: the angle is the turn from → to, clockwise on the page. */
  readonly to: number;
  readonly label: string;
  readonly height?: number;
  /** How far out from the centre the edges are drawn already, at `from` and at `to`; extension lines go on from there. */
  readonly drawn?: readonly [number, number];
  /** Distance of the label's near side from the centre; just outside the arc unless given. */
  readonly labelRadius?: number;
}

const beyond = 1.5;

/** Extension lines where the edges stop short of the arc. */
const legs = ({ centre, radius, from, to, drawn = [radius, radius] }: AngleDimensionOptions): Item[] =>
  [[from, drawn[0]], [to, drawn[1]]].flatMap(([angle, reach]) => reach! + 1 >= radius ? []
    : [shape('dimension', line(add(centre, polar(angle!, reach! + 1)), add(centre, polar(angle!, radius + beyond))))]);

/** The arc with its arrows; they point in from outside where the arc is short. A head leans by half its own turn, so that it lies on the arc. */
const arc = ({ centre, radius, from, to }: AngleDimensionOptions): Item[] => {
  const head = arrowLength / radius;
  const inside = (to - from) * radius >= 3 * arrowLength;
  const tail = inside ? -head / 2 : 2 * head;
  const side = inside ? 1 : -1;
  const heading = (angle: number, way: 1 | -1): number => angle + way * side * (Math.PI / 2 - head / 2);
  const tip = (angle: number): Point => add(centre, polar(angle, radius));
  return [
    shape('dimension', arcPath(circularArc(centre, radius, from - tail, to + tail))),
    arrow(tip(from), heading(from, -1)), arrow(tip(to), heading(to, 1)),
  ];
};

/**
 * The dimension of an angle: an arc with arrows, extension lines where the edges stop short, and the label level, outside the
 * arc on the bisector, wholly beyond the arc's tangent there so that neither arc nor extension lines touch it.
 */
export const angleDimension = (options: AngleDimensionOptions, font: Font): Item[] => {
  const { centre, radius, from, to, label, height = 2.5, labelRadius = radius + beyond + 0.7 } = options;
  const bisector = (from + to) / 2;
  const half = { x: font.width(label, height) / 2, y: height / 2 };
  const reach = labelRadius + Math.abs(Math.cos(bisector)) * half.x + Math.abs(Math.sin(bisector)) * half.y;
  const middle = add(centre, polar(bisector, reach));
  const words = letter({ x: middle.x, y: middle.y + half.y }, label, { height, anchor: 'middle' });
  return [...legs(options), ...arc(options), words];
};
