import type { Item } from '../../drawing/drawing.js';
import { shape } from '../../drawing/items.js';
import { point, type Point } from '../../geometry/point.js';
import { line } from '../../geometry/shapes.js';

/** A hole on a pattern: its centre and half its extents, mm. */
export interface Extent {
  readonly centre: Point;
  readonly rx: number;
  readonly ry: number;
}

/** Centre lines keep this far off a hole's edge, mm. */
const gap = 2;

/** Centre lines along and across a pattern from edge to edge (corners `low` and `high`), bare over the hole; one for which a side has no room is left out. */
export const centreLines = (low: Point, high: Point, { centre, rx, ry }: Extent): Item[] => {
  const [left, right, top, bottom] = [centre.x - rx - gap, centre.x + rx + gap, centre.y - ry - gap, centre.y + ry + gap];
  return [
    ...(left > low.x ? [line(point(low.x, centre.y), point(left, centre.y))] : []),
    ...(right < high.x ? [line(point(right, centre.y), point(high.x, centre.y))] : []),
    ...(top > low.y ? [line(point(centre.x, low.y), point(centre.x, top))] : []),
    ...(bottom < high.y ? [line(point(centre.x, bottom), point(centre.x, high.y))] : []),
  ].map((path) => shape('centre', path, 'centre-line'));
};
