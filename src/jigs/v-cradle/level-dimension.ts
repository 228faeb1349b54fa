import { arrow, arrowLength } from '../../drawing/arrow.js';
import type { Item } from '../../drawing/drawing.js';
import { letter, shape } from '../../drawing/items.js';
import { point, type Point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';

/** A height between two points, lettered level beside its line. mm. */
export interface LevelDimension {
  readonly high: Point;
  readonly low: Point;
  /** Where the dimension line stands. */
  readonly x: number;
  /** On which side of the line the label stands. */
  readonly side: 'left' | 'right';
  readonly label: string | readonly string[];
}

/**
 * An upright dimension with its label level beside it: for heights too short to letter along, one above the other in a
 * column, where labels along the line would stand on each other. Its arrows point in from outside where it is short.
 */
export const levelDimension = ({ high, low, x, side, label }: LevelDimension): Item[] => {
  const way = Math.sign(x - high.x) || 1;
  const extension = (from: Point): Item[] => Math.abs(x - from.x) <= 1 ? []
    : [shape('dimension', line(point(from.x + way, from.y), point(x + 1.5 * way, from.y)))];
  const inside = low.y - high.y >= 3 * arrowLength;
  const reach = inside ? -arrowLength / 2 : 2 * arrowLength;
  const up = -Math.PI / 2;
  const lines = typeof label === 'string' ? [label] : label;
  const middle = (high.y + low.y) / 2;
  return [
    ...extension(high), ...extension(low),
    shape('dimension', line(point(x, high.y - reach), point(x, low.y + reach))),
    arrow(point(x, high.y), inside ? up : -up), arrow(point(x, low.y), inside ? -up : up),
    ...lines.map((text, i) => letter(
      point(x + (side === 'right' ? 2 : -2), middle + 1.25 + 3.75 * (i - (lines.length - 1) / 2)), text, { anchor: side === 'right' ? 'start' : 'end' },
    )),
  ];
};
