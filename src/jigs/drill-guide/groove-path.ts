import type { Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { circularArc, polyline } from '../../geometry/shapes.js';
import type { Sole } from './sole.js';

/**
 * The groove in a section square to the work: x across from its middle, y down from the flat of the sole (so the groove is at
 * negative y), left edge to right edge. Exact: a V in two lines, a cove in one arc. Nothing for a flat sole to call it with.
 */
export const groovePath = ({ form, depth, mouth }: Sole): Path => {
  const [left, right] = [point(-mouth, 0), point(mouth, 0)];
  if (form !== 'cove') return polyline([left, point(0, -depth), right]);
  const radius = (depth * depth + mouth * mouth) / (2 * depth);
  const half = Math.atan2(mouth, radius - depth);
  return { start: left, segments: [circularArc(point(0, radius - depth), radius, -Math.PI / 2 - half, -Math.PI / 2 + half)], closed: false };
};
