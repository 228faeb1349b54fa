import { arcToCubics } from '../../geometry/arc-to-cubics.js';
import { eachSegment, type Cubic, type Path, type Segment } from '../../geometry/path.js';
import type { Point } from '../../geometry/point.js';
import { formatNumber } from '../format-number.js';

/** Within 0.05 µm. */
const decimals = 4;

const pair = (p: Point): string => `${formatNumber(p.x, decimals)} ${formatNumber(p.y, decimals)}`;

const curve = ({ c1, c2, to }: Cubic): string => `${pair(c1)} ${pair(c2)} ${pair(to)} c`;

const segmentOperators = (segment: Segment): string[] => {
  switch (segment.kind) {
    case 'line': return [`${pair(segment.to)} l`];
    case 'cubic': return [curve(segment)];
    case 'arc': return arcToCubics(segment).map(curve);
  }
};

/**
 * A path as PDF construction operators (m, l, c, h) in mm. Arcs become cubics here and nowhere earlier; every point within
 * 0.05 µm of them. Refuses numbers that are not finite.
 */
export const pathOperators = (path: Path): string[] => {
  const operators = [`${pair(path.start)} m`];
  eachSegment(path, (segment) => operators.push(...segmentOperators(segment)));
  if (path.closed) operators.push('h');
  return operators;
};
